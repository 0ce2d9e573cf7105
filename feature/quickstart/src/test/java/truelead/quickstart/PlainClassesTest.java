package truelead.quickstart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;

class PlainClassesTest {

	private final Map<String, byte[]> compiled = compiled();
	private final Map<String, byte[]> plain = PlainClasses.of(compiled);

	@Test
	void saysTheSameAsBefore() throws ReflectiveOperationException {
		Map<String, byte[]> files = new HashMap<>();
		plain.forEach((name, bytes) -> files.put(name + ".class", bytes));
		Class<?> rewritten = new TryLoader(files).loadClass("truelead.quickstart.Workshop");
		assertThat(rewritten).isNotSameAs(Workshop.class);
		assertThat(rewritten.getMethod("lines").invoke(null)).isEqualTo(Workshop.lines());
	}

	@Test
	void leavesNothingToBeLinkedAtRunTime() {
		assertThat(compiled.values().stream().mapToLong(PlainClassesTest::lateLinks).sum()).isGreaterThan(40);
		assertThat(plain.values().stream().mapToLong(PlainClassesTest::lateLinks).sum()).isZero();
	}

	@Test
	void givesEveryLambdaAClassThatJavaTakes() throws ClassNotFoundException {
		Map<String, byte[]> files = new HashMap<>();
		plain.forEach((name, bytes) -> files.put(name + ".class", bytes));
		assertThat(plain).hasSizeGreaterThan(compiled.size() + 15);
		new TryLoader(files).loadAll(plain.keySet());
	}

	private static long lateLinks(byte[] bytes) {
		ClassNode node = new ClassNode();
		new ClassReader(bytes).accept(node, 0);
		return node.methods.stream().flatMap(method -> Stream.of(method.instructions.toArray()))
				.filter(i -> i.getType() == AbstractInsnNode.INVOKE_DYNAMIC_INSN).count();
	}

	private static Map<String, byte[]> compiled() {
		Map<String, byte[]> classes = new TreeMap<>();
		try (Stream<Path> files = Files.list(Path.of(Workshop.class.getResource("Workshop.class").toURI()).getParent())) {
			for (Path file : files.filter(f -> f.getFileName().toString().startsWith("Workshop")).toList()) {
				classes.put("truelead/quickstart/" + file.getFileName().toString().replace(".class", ""), Files.readAllBytes(file));
			}
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		} catch (URISyntaxException impossible) {
			throw new IllegalStateException(impossible);
		}
		return classes;
	}
}
