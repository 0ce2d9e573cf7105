package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class WorkbenchStartsTest {
    @Test
    void aWindowIsOpen() {
        assertThat(PlatformUI.getWorkbench().getActiveWorkbenchWindow()).isNotNull();
    }
}
