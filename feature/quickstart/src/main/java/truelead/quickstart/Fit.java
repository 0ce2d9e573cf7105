package truelead.quickstart;

import java.util.Map;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Makes a value on the stack one of another type as a lambda's call does: casts, boxes, unboxes, widens. */
final class Fit {

	private static final Map<String, Type> BOXED = Map.of("java/lang/Boolean", Type.BOOLEAN_TYPE, "java/lang/Byte", Type.BYTE_TYPE,
			"java/lang/Character", Type.CHAR_TYPE, "java/lang/Short", Type.SHORT_TYPE, "java/lang/Integer", Type.INT_TYPE, "java/lang/Long",
			Type.LONG_TYPE, "java/lang/Float", Type.FLOAT_TYPE, "java/lang/Double", Type.DOUBLE_TYPE);

	private Fit() {
	}

	static boolean primitive(Type type) {
		return type.getSort() < Type.ARRAY;
	}

	/** The class that a primitive type is boxed in. */
	static Type boxOf(Type primitive) {
		return BOXED.entrySet().stream().filter(entry -> entry.getValue().equals(primitive))
				.map(entry -> Type.getObjectType(entry.getKey())).findFirst().orElseThrow();
	}

	/** From one type to another; {@code meant} is what the value is known to be, which may be narrower than {@code from}. */
	static void fit(MethodVisitor code, Type from, Type meant, Type to) {
		if (primitive(from) && primitive(to)) {
			widen(code, from, to);
		} else if (primitive(from)) {
			box(code, from);
		} else if (primitive(to)) {
			Type box = BOXED.containsKey(meant.getInternalName()) ? meant : boxOf(to);
			Type inside = BOXED.get(box.getInternalName());
			cast(code, box);
			code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, box.getInternalName(), inside.getClassName() + "Value",
					"()" + inside.getDescriptor(), false);
			widen(code, inside, to);
		} else if (!from.equals(to)) {
			cast(code, to);
		}
	}

	/** The body's answer as the interface's; {@code meant} is the answer that the call site has in mind. */
	static void answer(MethodVisitor code, Type from, Type meant, Type to) {
		if (to.getSort() == Type.VOID) {
			if (from.getSize() > 0) {
				code.visitInsn(from.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
			}
		} else if (primitive(from) && !primitive(to) && !primitive(meant) && BOXED.containsKey(meant.getInternalName())) {
			Type inside = BOXED.get(meant.getInternalName());
			widen(code, from, inside);
			box(code, inside);
		} else {
			fit(code, from, from, to);
		}
	}

	private static void cast(MethodVisitor code, Type to) {
		if (!to.getInternalName().equals("java/lang/Object")) {
			code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
		}
	}

	private static void box(MethodVisitor code, Type primitive) {
		Type box = boxOf(primitive);
		code.visitMethodInsn(Opcodes.INVOKESTATIC, box.getInternalName(), "valueOf", Type.getMethodDescriptor(box, primitive), false);
	}

	private static void widen(MethodVisitor code, Type from, Type to) {
		if (from.equals(to)) {
			return;
		}
		switch (to.getSort()) {
			case Type.LONG -> code.visitInsn(Opcodes.I2L);
			case Type.FLOAT -> code.visitInsn(from.getSort() == Type.LONG ? Opcodes.L2F : Opcodes.I2F);
			case Type.DOUBLE -> code.visitInsn(switch (from.getSort()) {
				case Type.LONG -> Opcodes.L2D;
				case Type.FLOAT -> Opcodes.F2D;
				default -> Opcodes.I2D;
			});
			default -> {
				// the smaller ones are ints on the stack
			}
		}
	}
}
