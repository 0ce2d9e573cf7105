package truelead.quickstart;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Map;
import java.util.Set;

/** Loads classes from memory to see whether Java takes them. */
final class TryLoader extends ClassLoader {

	private final Map<String, byte[]> entries;

	/** @param entries file names in the jar, with the bytes */
	TryLoader(Map<String, byte[]> entries) {
		super(ClassLoader.getPlatformClassLoader());
		this.entries = entries;
	}

	/** Loads and verifies the classes of these internal names; a class that Java does not take throws. */
	void loadAll(Set<String> names) throws ClassNotFoundException {
		for (String name : names) {
			// asking for its methods verifies a class without running anything of it
			Class.forName(name.replace('/', '.'), false, this).getDeclaredMethods();
		}
	}

	@Override
	protected Class<?> findClass(String name) throws ClassNotFoundException {
		byte[] bytes = entries.get(name.replace('.', '/') + ".class");
		if (bytes == null) {
			throw new ClassNotFoundException(name);
		}
		return defineClass(name, bytes, 0, bytes.length);
	}

	@Override
	public InputStream getResourceAsStream(String name) {
		byte[] bytes = entries.get(name);
		return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
	}
}
