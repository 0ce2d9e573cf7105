package truelead.quickstart;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Writes a jar anew so that the command in it starts fast: our lambdas become classes and our records get methods of their own. Java would
 * make both while the program runs, which took 40 % of the time that checking a small program takes from a cold start.
 */
public final class QuickJar {

	private static final String OURS = "truelead/";

	private QuickJar() {
	}

	/** The jar to write anew. A jar that Java would not take fails the build. */
	public static void main(String[] arguments) throws IOException, ClassNotFoundException {
		Path jar = Path.of(arguments[0]);
		Map<String, byte[]> entries = read(jar);
		Map<String, byte[]> ours = new LinkedHashMap<>();
		entries.forEach((name, bytes) -> {
			if (name.startsWith(OURS) && name.endsWith(".class")) {
				ours.put(name.substring(0, name.length() - ".class".length()), bytes);
			}
		});
		Map<String, byte[]> plain = PlainClasses.of(ours);
		plain.forEach((name, bytes) -> entries.put(name + ".class", bytes));
		new TryLoader(entries).loadAll(plain.keySet());
		write(jar, entries);
	}

	private static Map<String, byte[]> read(Path jar) throws IOException {
		Map<String, byte[]> entries = new LinkedHashMap<>();
		try (ZipFile zip = new ZipFile(jar.toFile())) {
			for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements();) {
				ZipEntry entry = all.nextElement();
				// folders are of no use in a jar, and each costs a little when it is opened
				if (!entry.isDirectory()) {
					entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
				}
			}
		}
		return entries;
	}

	private static void write(Path jar, Map<String, byte[]> entries) throws IOException {
		Path fresh = Path.of(jar + ".new");
		try (OutputStream out = Files.newOutputStream(fresh); ZipOutputStream zip = new ZipOutputStream(out)) {
			byte[] manifest = entries.remove(JarFile.MANIFEST_NAME);
			if (manifest != null) {
				add(zip, JarFile.MANIFEST_NAME, manifest);
			}
			for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
				add(zip, entry.getKey(), entry.getValue());
			}
		}
		Files.move(fresh, jar, StandardCopyOption.REPLACE_EXISTING);
	}

	private static void add(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
		ZipEntry entry = new ZipEntry(name);
		// the same jar from the same classes
		entry.setLastModifiedTime(FileTime.fromMillis(0));
		zip.putNextEntry(entry);
		zip.write(bytes);
		zip.closeEntry();
	}
}
