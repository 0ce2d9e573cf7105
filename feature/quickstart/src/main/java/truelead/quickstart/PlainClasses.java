package truelead.quickstart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Classes without the call sites that Java links while the program runs: those of lambdas, method references and the methods of records.
 */
final class PlainClasses {

	private static final String LAMBDA = "java/lang/invoke/LambdaMetafactory.metafactory";
	private static final String RECORD = "java/lang/runtime/ObjectMethods.bootstrap";

	private final Map<String, ClassNode> classes = new LinkedHashMap<>();
	private final Map<String, byte[]> made = new LinkedHashMap<>();

	private PlainClasses(Map<String, byte[]> compiled) {
		compiled.forEach((name, bytes) -> {
			ClassNode node = new ClassNode();
			new ClassReader(bytes).accept(node, 0);
			classes.put(name, node);
		});
	}

	/**
	 * The classes written anew and those that are made of their lambdas, by internal name. Classes of one nest must be given together. A
	 * call site of another kind is left as it is.
	 */
	static Map<String, byte[]> of(Map<String, byte[]> compiled) {
		PlainClasses all = new PlainClasses(compiled);
		all.classes.values().forEach(all::rewrite);
		Map<String, byte[]> plain = new LinkedHashMap<>();
		all.classes.forEach((name, node) -> {
			ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
			node.accept(writer);
			plain.put(name, writer.toByteArray());
		});
		plain.putAll(all.made);
		return plain;
	}

	private void rewrite(ClassNode host) {
		Map<String, LambdaClass> lambdas = new LinkedHashMap<>();
		for (MethodNode method : host.methods) {
			for (AbstractInsnNode instruction : method.instructions.toArray()) {
				if (instruction instanceof InvokeDynamicInsnNode site) {
					switch (site.bsm.getOwner() + "." + site.bsm.getName()) {
						case LAMBDA -> method.instructions.set(site,
								lambdas.computeIfAbsent(Type.getReturnType(site.desc).getInternalName(),
										kind -> new LambdaClass(host.name + "$$" + lambdas.size())).add(site));
						case RECORD -> {
							method.instructions.insertBefore(site, RecordMethod.of(host.name, site));
							method.instructions.remove(site);
						}
						default -> {
							// left to Java
						}
					}
				}
			}
		}
		// a mate of the nest may call what is private there
		ClassNode nest = host.nestHostClass == null ? host : classes.get(host.nestHostClass);
		lambdas.values().forEach(lambda -> {
			if (nest.nestMembers == null) {
				nest.nestMembers = new ArrayList<>(List.of());
			}
			nest.nestMembers.add(lambda.name());
			made.put(lambda.name(), lambda.bytes(nest.name));
		});
	}
}
