package truelead.quickstart;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/**
 * The class of all lambdas and method references of one class and one interface: a number that says which of them an object is, fields for
 * the values it holds on to, and the interface's method, which goes by the number. A class for each of them would be loaded for each of
 * them.
 */
final class LambdaClass {

	private static final String MAKE = "make";
	private static final String ALONE = "ALONE";
	private static final String WHICH = "which";
	private static final Type OBJECT = Type.getType(Object.class);

	private final String name;
	private final List<InvokeDynamicInsnNode> sites = new ArrayList<>();

	/** A class of that name without lambdas yet. */
	LambdaClass(String name) {
		this.name = name;
	}

	String name() {
		return name;
	}

	/** Takes in a call site of LambdaMetafactory.metafactory; gives what stands in its place. */
	AbstractInsnNode add(InvokeDynamicInsnNode site) {
		sites.add(site);
		return new MethodInsnNode(Opcodes.INVOKESTATIC, name, MAKE + (sites.size() - 1), site.desc, false);
	}

	/** The class; {@code nest} is the outermost class around the call sites. */
	byte[] bytes(String nest) {
		ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
		InvokeDynamicInsnNode first = sites.get(0);
		writer.visit(Opcodes.V17, Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC | Opcodes.ACC_SUPER, name, null, "java/lang/Object",
				new String[] {Type.getReturnType(first.desc).getInternalName()});
		writer.visitNestHost(nest);
		Set<String> fields = new LinkedHashSet<>();
		writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, WHICH, "I", null, null).visitEnd();
		for (InvokeDynamicInsnNode site : sites) {
			Type[] held = held(site);
			for (int i = 0; i < held.length; i++) {
				if (fields.add(field(held, i))) {
					writer.visitField(Opcodes.ACC_PRIVATE, field(held, i), kept(held[i]).getDescriptor(), null, null).visitEnd();
				}
			}
		}
		constructor(writer);
		for (int i = 0; i < sites.size(); i++) {
			maker(writer, i);
		}
		if (sites.stream().anyMatch(site -> held(site).length == 0)) {
			alone(writer);
		}
		method(writer, first);
		writer.visitEnd();
		return writer.toByteArray();
	}

	private static Type[] held(InvokeDynamicInsnNode site) {
		return Type.getArgumentTypes(site.desc);
	}

	/** The type that a value is kept as. */
	private static Type kept(Type type) {
		return Fit.primitive(type) ? type : OBJECT;
	}

	/** The field of a value: the first, second and so on of its type. */
	private static String field(Type[] held, int index) {
		int number = 0;
		for (int i = 0; i < index; i++) {
			number += kept(held[i]).equals(kept(held[index])) ? 1 : 0;
		}
		return (Fit.primitive(held[index]) ? held[index].getDescriptor() : "L") + number;
	}

	private void constructor(ClassWriter writer) {
		MethodVisitor code = writer.visitMethod(0, "<init>", "(I)V", null, null);
		code.visitCode();
		code.visitVarInsn(Opcodes.ALOAD, 0);
		code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
		code.visitVarInsn(Opcodes.ALOAD, 0);
		code.visitVarInsn(Opcodes.ILOAD, 1);
		code.visitFieldInsn(Opcodes.PUTFIELD, name, WHICH, "I");
		end(code, Opcodes.RETURN);
	}

	/** The maker gives the one object there is where nothing is held on to, as Java itself does, a new one otherwise. */
	private void maker(ClassWriter writer, int which) {
		Type[] held = held(sites.get(which));
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, MAKE + which, sites.get(which).desc, null, null);
		code.visitCode();
		if (held.length == 0) {
			code.visitFieldInsn(Opcodes.GETSTATIC, name, ALONE, "[L" + name + ";");
			number(code, which);
			code.visitInsn(Opcodes.AALOAD);
		} else {
			fresh(code, which);
		}
		int slot = 0;
		for (int i = 0; i < held.length; i++) {
			code.visitInsn(Opcodes.DUP);
			code.visitVarInsn(held[i].getOpcode(Opcodes.ILOAD), slot);
			code.visitFieldInsn(Opcodes.PUTFIELD, name, field(held, i), kept(held[i]).getDescriptor());
			slot += held[i].getSize();
		}
		end(code, Opcodes.ARETURN);
	}

	/** The objects of those that hold on to nothing, each at its number. */
	private void alone(ClassWriter writer) {
		writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ALONE, "[L" + name + ";", null, null).visitEnd();
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
		code.visitCode();
		number(code, sites.size());
		code.visitTypeInsn(Opcodes.ANEWARRAY, name);
		for (int which = 0; which < sites.size(); which++) {
			if (held(sites.get(which)).length == 0) {
				code.visitInsn(Opcodes.DUP);
				number(code, which);
				fresh(code, which);
				code.visitInsn(Opcodes.AASTORE);
			}
		}
		code.visitFieldInsn(Opcodes.PUTSTATIC, name, ALONE, "[L" + name + ";");
		end(code, Opcodes.RETURN);
	}

	private void fresh(MethodVisitor code, int which) {
		code.visitTypeInsn(Opcodes.NEW, name);
		code.visitInsn(Opcodes.DUP);
		number(code, which);
		code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", "(I)V", false);
	}

	private static void number(MethodVisitor code, int number) {
		code.visitIntInsn(Opcodes.SIPUSH, number);
	}

	/** The interface's method. */
	private void method(ClassWriter writer, InvokeDynamicInsnNode first) {
		Type erased = (Type) first.bsmArgs[0];
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC, first.name, erased.getDescriptor(), null, null);
		code.visitCode();
		if (sites.size() > 1) {
			Label[] labels = sites.stream().map(site -> new Label()).toArray(Label[]::new);
			code.visitVarInsn(Opcodes.ALOAD, 0);
			code.visitFieldInsn(Opcodes.GETFIELD, name, WHICH, "I");
			code.visitTableSwitchInsn(0, labels.length - 1, labels[labels.length - 1], labels);
			for (int i = 0; i < labels.length; i++) {
				code.visitLabel(labels[i]);
				code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
				body(code, sites.get(i), erased);
			}
		} else {
			body(code, first, erased);
		}
		code.visitMaxs(0, 0);
		code.visitEnd();
	}

	/** What is held and what is given, fitted to what the body of one of them takes, and its answer fitted back. */
	private void body(MethodVisitor code, InvokeDynamicInsnNode site, Type erased) {
		Type[] held = held(site);
		Handle body = (Handle) site.bsmArgs[1];
		Type meant = (Type) site.bsmArgs[2];
		boolean maker = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
		Type owner = Type.getObjectType(body.getOwner());
		if (maker) {
			code.visitTypeInsn(Opcodes.NEW, body.getOwner());
			code.visitInsn(Opcodes.DUP);
		}
		List<Type> taken = new ArrayList<>();
		if (!maker && body.getTag() != Opcodes.H_INVOKESTATIC) {
			taken.add(owner);
		}
		taken.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
		for (int i = 0; i < held.length; i++) {
			code.visitVarInsn(Opcodes.ALOAD, 0);
			code.visitFieldInsn(Opcodes.GETFIELD, name, field(held, i), kept(held[i]).getDescriptor());
			Fit.fit(code, kept(held[i]), held[i], taken.get(i));
		}
		int slot = 1;
		for (int i = 0; i < erased.getArgumentTypes().length; i++) {
			Type given = erased.getArgumentTypes()[i];
			code.visitVarInsn(given.getOpcode(Opcodes.ILOAD), slot);
			slot += given.getSize();
			Fit.fit(code, given, meant.getArgumentTypes()[i], taken.get(held.length + i));
		}
		code.visitMethodInsn(opcode(body), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
		Fit.answer(code, maker ? owner : Type.getReturnType(body.getDesc()), meant.getReturnType(), erased.getReturnType());
		code.visitInsn(erased.getReturnType().getOpcode(Opcodes.IRETURN));
	}

	private static int opcode(Handle body) {
		return switch (body.getTag()) {
			case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
			case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
			// what is private is called like anything else from a mate of the nest
			default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
		};
	}

	private static void end(MethodVisitor code, int returns) {
		code.visitInsn(returns);
		code.visitMaxs(0, 0);
		code.visitEnd();
	}
}
