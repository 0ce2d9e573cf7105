package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;

/** A program is followed from a tool change as if it had come there from its first block: nothing that was in force may be left behind. */
class RestartTest {

	private static final CannedCycles.Kept NO_CYCLE = new CannedCycles.Kept(Optional.empty(), CycleLevels.Kept.NONE,
			TappingLead.Kept.NONE, false, false);

	/** Made anew from the other fields when asked for; the state that a place belongs to. */
	private static final Set<String> MADE_ANEW = Set.of("modal", "faceModal", "sideModal", "lockedModal", "pitchModal", "place", "state");

	@Test
	void aCopiedStateHasAllThatIsInForce() throws ReflectiveOperationException {
		MachineState state = new MachineState(MachineProfile.named("turning"), true);
		fill(state);
		fill(state.place);
		MachineState copy = new MachineState(state);
		assertSame(state, copy);
		assertSame(state.place, copy.place);
	}

	@Test
	void whatFollowsAToolChangeDoesNotReachBackToTheRestart() {
		MachineState state = new MachineState(MachineProfile.generic(), false);
		Restart restart = new Restart(7, state, NO_CYCLE, Output.memory());
		state.place.moveTo(new Point(1, 2, 3));
		state.coolant = true;
		state.changed();
		assertThat(restart.same(new Restart(7, state, NO_CYCLE, Output.memory()))).isFalse();
		assertThat(restart.same(new Restart(7, restart.state(), NO_CYCLE, Output.memory()))).isTrue();
	}

	private static void assertSame(Object one, Object other) throws ReflectiveOperationException {
		for (Field field : one.getClass().getDeclaredFields()) {
			if (!Modifier.isStatic(field.getModifiers()) && !MADE_ANEW.contains(field.getName())) {
				field.setAccessible(true);
				assertThat(field.get(other)).as(field.getName()).isEqualTo(field.get(one));
			}
		}
	}

	/** Gives every field that can change a value that it has not at the start. */
	private static void fill(Object state) throws ReflectiveOperationException {
		for (Field field : state.getClass().getDeclaredFields()) {
			if (Modifier.isStatic(field.getModifiers()) || MADE_ANEW.contains(field.getName())) {
				continue;
			}
			field.setAccessible(true);
			if (field.getType().isArray()) {
				Array.setBoolean(field.get(state), 1, true);
			} else if (field.get(state) instanceof Map<?, ?>) {
				fill(field.getName(), field.get(state));
			} else if (!Modifier.isFinal(field.getModifiers())) {
				field.set(state, another(field, field.get(state)));
			}
		}
	}

	@SuppressWarnings("unchecked")
	private static void fill(String name, Object map) {
		if (name.equals("frames")) {
			((Map<Object, Object>) map).put(List.of("G92"), 5);
		} else {
			((Map<Object, Object>) map).put(5, name.equals("offsetData") ? List.of(2.5) : new TreeMap<>(Map.of(5221, 2.5)));
		}
	}

	private static Object another(Field field, Object now) {
		Class<?> type = field.getType();
		if (type == boolean.class) {
			return !(Boolean) now;
		} else if (type == int.class) {
			return (Integer) now + 7;
		} else if (type == Setting.class) {
			return new Setting(4, Optional.empty(), Reason.of(field.getName()));
		} else if (type == Optional.class) {
			return Optional.of(Reason.of(field.getName()));
		} else if (type == Point.class) {
			return new Point(4, 5, field.getName().hashCode());
		} else if (type == Frame.class) {
			return Frame.shift(new double[] {field.getName().hashCode(), 1, 2});
		} else if (type == Rotary.class) {
			return Rotary.NONE.with(0, 30);
		} else if (type == List.class) {
			return List.of(Reason.of(field.getName()));
		} else if (type.isEnum()) {
			return type.getEnumConstants()[now == type.getEnumConstants()[0] ? 1 : 0];
		}
		throw new IllegalStateException("say here what another " + type.getSimpleName() + " is, for " + Reason.of(field.getName()));
	}
}
