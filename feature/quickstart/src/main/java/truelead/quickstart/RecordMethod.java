package truelead.quickstart;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.FrameNode;
import org.objectweb.asm.tree.InsnList;
import org.objectweb.asm.tree.InsnNode;
import org.objectweb.asm.tree.IntInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.JumpInsnNode;
import org.objectweb.asm.tree.LabelNode;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.TypeInsnNode;
import org.objectweb.asm.tree.VarInsnNode;

/** What equals, hashCode and toString of a record do, written out; the same answers as those of {@code java.lang.runtime.ObjectMethods}. */
final class RecordMethod {

	private static final String BUILDER = "java/lang/StringBuilder";

	private final String record;
	private final List<Handle> components = new ArrayList<>();
	private final InsnList code = new InsnList();

	private RecordMethod(String record, InvokeDynamicInsnNode site) {
		this.record = record;
		for (int i = 2; i < site.bsmArgs.length; i++) {
			components.add((Handle) site.bsmArgs[i]);
		}
		switch (site.name) {
			case "equals" -> sameComponents();
			case "hashCode" -> hash();
			case "toString" -> text((String) site.bsmArgs[1]);
			default -> throw new IllegalArgumentException("no method of a record: " + site.name);
		}
	}

	/** The instructions in place of the call site, which has its arguments on the stack. */
	static InsnList of(String record, InvokeDynamicInsnNode site) {
		return new RecordMethod(record, site).code;
	}

	private void sameComponents() {
		LabelNode no = new LabelNode();
		code.add(new InsnNode(Opcodes.POP2));
		code.add(new VarInsnNode(Opcodes.ALOAD, 1));
		code.add(new TypeInsnNode(Opcodes.INSTANCEOF, record));
		code.add(new JumpInsnNode(Opcodes.IFEQ, no));
		for (Handle component : components) {
			Type type = get(component);
			code.add(new VarInsnNode(Opcodes.ALOAD, 1));
			code.add(new TypeInsnNode(Opcodes.CHECKCAST, record));
			code.add(new FieldInsnNode(Opcodes.GETFIELD, record, component.getName(), component.getDesc()));
			if (Fit.primitive(type)) {
				call(Fit.boxOf(type).getInternalName(), "compare", Type.getMethodDescriptor(Type.INT_TYPE, type, type));
				code.add(new JumpInsnNode(Opcodes.IFNE, no));
			} else {
				call("java/util/Objects", "equals", "(Ljava/lang/Object;Ljava/lang/Object;)Z");
				code.add(new JumpInsnNode(Opcodes.IFEQ, no));
			}
		}
		code.add(new InsnNode(Opcodes.ICONST_1));
		code.add(new InsnNode(Opcodes.IRETURN));
		code.add(no);
		code.add(new FrameNode(Opcodes.F_SAME, 0, null, 0, null));
		code.add(new InsnNode(Opcodes.ICONST_0));
	}

	private void hash() {
		code.add(new InsnNode(Opcodes.POP));
		code.add(new InsnNode(Opcodes.ICONST_0));
		for (Handle component : components) {
			code.add(new IntInsnNode(Opcodes.BIPUSH, 31));
			code.add(new InsnNode(Opcodes.IMUL));
			Type type = get(component);
			if (Fit.primitive(type)) {
				call(Fit.boxOf(type).getInternalName(), "hashCode", Type.getMethodDescriptor(Type.INT_TYPE, type));
			} else {
				call("java/util/Objects", "hashCode", "(Ljava/lang/Object;)I");
			}
			code.add(new InsnNode(Opcodes.IADD));
		}
	}

	/** {@code Name[first=1, second=2]}; {@code names} are the components', parted by semicolons. */
	private void text(String names) {
		int start = Math.max(record.lastIndexOf('/'), record.lastIndexOf('$')) + 1;
		while (Character.isDigit(record.charAt(start))) {
			// a record within a method
			start++;
		}
		String simple = record.substring(start);
		String[] labels = names.split(";");
		code.add(new InsnNode(Opcodes.POP));
		code.add(new TypeInsnNode(Opcodes.NEW, BUILDER));
		code.add(new InsnNode(Opcodes.DUP));
		code.add(new LdcInsnNode(simple + "["));
		code.add(new MethodInsnNode(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "(Ljava/lang/String;)V", false));
		for (int i = 0; i < components.size(); i++) {
			code.add(new LdcInsnNode((i == 0 ? "" : ", ") + labels[i] + "="));
			append("Ljava/lang/String;");
			Type type = get(components.get(i));
			append(switch (type.getSort()) {
				case Type.BYTE, Type.SHORT -> "I";
				case Type.OBJECT, Type.ARRAY -> "Ljava/lang/Object;";
				default -> type.getDescriptor();
			});
		}
		code.add(new LdcInsnNode("]"));
		append("Ljava/lang/String;");
		code.add(new MethodInsnNode(Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;", false));
	}

	private Type get(Handle component) {
		code.add(new VarInsnNode(Opcodes.ALOAD, 0));
		code.add(new FieldInsnNode(Opcodes.GETFIELD, record, component.getName(), component.getDesc()));
		return Type.getType(component.getDesc());
	}

	private void append(String type) {
		code.add(new MethodInsnNode(Opcodes.INVOKEVIRTUAL, BUILDER, "append", "(" + type + ")L" + BUILDER + ";", false));
	}

	private void call(String owner, String method, String descriptor) {
		code.add(new MethodInsnNode(Opcodes.INVOKESTATIC, owner, method, descriptor, false));
	}
}
