package truelead.quickstart;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** The class of one lambda or method reference: a field for each value it holds on to, and the one method of its interface. */
final class LambdaClass {

	private static final String MAKE = "make";
	private static final String ONE = "ONE";

	private final String name;
	private final InvokeDynamicInsnNode site;
	private final Type[] held;
	private final Handle body;
	private final ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);

	/** A class of that name for a call site of LambdaMetafactory.metafactory; {@code nest} is the outermost class around the call site. */
	LambdaClass(String name, String nest, InvokeDynamicInsnNode site) {
		this.name = name;
		this.site = site;
		this.held = Type.getArgumentTypes(site.desc);
		this.body = (Handle) site.bsmArgs[1];
		writer.visit(Opcodes.V17, Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC | Opcodes.ACC_SUPER, name, null, "java/lang/Object",
				new String[] {Type.getReturnType(site.desc).getInternalName()});
		writer.visitNestHost(nest);
		for (int i = 0; i < held.length; i++) {
			writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), held[i].getDescriptor(), null, null).visitEnd();
		}
		constructor();
		maker();
		if (held.length == 0) {
			one();
		}
		method((Type) site.bsmArgs[0], (Type) site.bsmArgs[2]);
		writer.visitEnd();
	}

	String name() {
		return name;
	}

	byte[] bytes() {
		return writer.toByteArray();
	}

	/** What stands in place of the call site. */
	AbstractInsnNode call() {
		return new MethodInsnNode(Opcodes.INVOKESTATIC, name, MAKE, site.desc, false);
	}

	private static String field(int index) {
		return "held" + index;
	}

	private void constructor() {
		MethodVisitor code = writer.visitMethod(0, "<init>", Type.getMethodDescriptor(Type.VOID_TYPE, held), null, null);
		code.visitCode();
		code.visitVarInsn(Opcodes.ALOAD, 0);
		code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
		int slot = 1;
		for (int i = 0; i < held.length; i++) {
			code.visitVarInsn(Opcodes.ALOAD, 0);
			code.visitVarInsn(held[i].getOpcode(Opcodes.ILOAD), slot);
			code.visitFieldInsn(Opcodes.PUTFIELD, name, field(i), held[i].getDescriptor());
			slot += held[i].getSize();
		}
		end(code, Opcodes.RETURN);
	}

	/** The maker gives the one object there is where nothing is held on to, as Java itself does, a new one otherwise. */
	private void maker() {
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, MAKE, site.desc, null, null);
		code.visitCode();
		if (held.length == 0) {
			code.visitFieldInsn(Opcodes.GETSTATIC, name, ONE, "L" + name + ";");
		} else {
			fresh(code);
		}
		end(code, Opcodes.ARETURN);
	}

	private void one() {
		writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONE, "L" + name + ";", null, null).visitEnd();
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", "()V", null, null);
		code.visitCode();
		fresh(code);
		code.visitFieldInsn(Opcodes.PUTSTATIC, name, ONE, "L" + name + ";");
		end(code, Opcodes.RETURN);
	}

	/** A new object of the values in the first local variables. */
	private void fresh(MethodVisitor code) {
		code.visitTypeInsn(Opcodes.NEW, name);
		code.visitInsn(Opcodes.DUP);
		int slot = 0;
		for (Type type : held) {
			code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), slot);
			slot += type.getSize();
		}
		code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", Type.getMethodDescriptor(Type.VOID_TYPE, held), false);
	}

	/** The interface's method: what is held and what is given, fitted to what the body takes, and its answer fitted back. */
	private void method(Type erased, Type meant) {
		MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC, site.name, erased.getDescriptor(), null, null);
		code.visitCode();
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
			code.visitFieldInsn(Opcodes.GETFIELD, name, field(i), held[i].getDescriptor());
			Fit.fit(code, held[i], held[i], taken.get(i));
		}
		int slot = 1;
		for (int i = 0; i < erased.getArgumentTypes().length; i++) {
			Type given = erased.getArgumentTypes()[i];
			code.visitVarInsn(given.getOpcode(Opcodes.ILOAD), slot);
			slot += given.getSize();
			Fit.fit(code, given, meant.getArgumentTypes()[i], taken.get(held.length + i));
		}
		code.visitMethodInsn(opcode(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
		Fit.answer(code, maker ? owner : Type.getReturnType(body.getDesc()), meant.getReturnType(), erased.getReturnType());
		end(code, erased.getReturnType().getOpcode(Opcodes.IRETURN));
	}

	private int opcode() {
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
