package truelead.speed;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Makes a folder of programs of the sizes a shop has: most small with holes and threads, a few large with contours. Same seed, same folder.
 */
final class ProgramMaker {

	private static final long SEED = 2049;

	private ProgramMaker() {
	}

	/** Writes {@code count} programs of {@code bytes} in all; sizes follow a long tail, as those of real folders do. */
	static void make(Path folder, int count, long bytes) throws IOException {
		Files.createDirectories(folder);
		Random random = new Random(SEED);
		double[] shares = new double[count];
		double sum = 0;
		for (int i = 0; i < count; i++) {
			shares[i] = Math.exp(1.6 * random.nextGaussian());
			sum += shares[i];
		}
		for (int i = 0; i < count; i++) {
			write(folder.resolve(String.format(Locale.ROOT, "O%04d.nc", i + 1)), (long) (bytes * shares[i] / sum), random);
		}
	}

	private static void write(Path file, long bytes, Random random) throws IOException {
		try (BufferedWriter out = Files.newBufferedWriter(file)) {
			long written = 0;
			StringBuilder text = new StringBuilder("%\nO0001 (SPEED)\nG17 G21 G40 G49 G80 G90 G94\n");
			text.append("T1 M6 (DRILL 5.0)\nG54 G0 X10. Y10. S3200 M3\nG43 Z25. H1 M8\nG99 G83 Z-20. R2. Q4. F320\n");
			holes(text, 8);
			text.append("G80\nT2 M6 (M6X1 TAP)\nG0 X10. Y10. S520 M3\nG43 Z25. H2 M8\nM29 S520\nG99 G84 Z-12. R5. F520\n");
			holes(text, 8);
			text.append("G80\nT3 M6 (END MILL 10 DIA)\nG0 X0. Y0. S6000 M3\nG43 Z5. H3\nG1 Z-2. F800\n");
			double x = 0;
			double y = 0;
			while (written + text.length() < bytes) {
				x += random.nextGaussian();
				y += random.nextGaussian();
				text.append(String.format(Locale.ROOT, "X%.3f Y%.3f", x, y))
						.append(random.nextInt(5) == 0 ? String.format(Locale.ROOT, " Z%.3f", -2 - random.nextDouble()) : "").append('\n');
				if (random.nextInt(8) == 0) {
					text.append(String.format(Locale.ROOT, "G3 X%.3f Y%.3f I1. J0.\nG1 ", x + 2, y));
					x += 2;
				}
				if (text.length() > 1 << 16) {
					written += text.length();
					out.append(text);
					text.setLength(0);
				}
			}
			out.append(text.append("G0 Z25. M9\nM30\n%\n"));
		}
	}

	private static void holes(StringBuilder text, int count) {
		for (int i = 1; i < count; i++) {
			text.append("X").append(10 + 15 * i).append(".\n");
		}
	}
}
