package truelead.house;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Java file of the project.
 *
 * @param path from the top of the project, with slashes
 * @param text as it stands in the file
 * @param code the same without comments, and with nothing in its strings
 */
record JavaSource(String path, String text, String code) {

	private static final Pattern NO_CODE = Pattern.compile(
			"//[^\\n]*|/\\*.*?\\*/|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*+\"|'(?:\\\\.|[^'\\\\\\n])++'", Pattern.DOTALL);
	private static final Pattern PACKAGE = Pattern.compile("^package ([\\w.]+);", Pattern.MULTILINE);
	private static final Pattern IMPORT = Pattern.compile("^import (static )?([\\w.]+)\\.(\\w+|\\*);", Pattern.MULTILINE);
	/** Javadoc, an empty line, or what is declared: up to {@code =}, {@code ;} or an opening brace. Other annotations are passed over. */
	private static final Pattern PIECE = Pattern.compile("^\\t*(?:/\\*\\*(?<doc>.*?)\\*/|(?<gap>$)|(?<override>@Override$)"
			+ "|(?<declared>(?:(?:public|private|protected|static|final|abstract|sealed|default) )*"
			+ "(?!return |throw |else |new |case |package |import |super|this)[\\w.]+[^;={}()\\n]*"
			+ "(?:\\((?:[^(){};]|\\([^()]*\\))*\\)[^;={}]*)?)(?=[;={]))", Pattern.DOTALL | Pattern.MULTILINE);
	private static final Pattern NAMED = Pattern.compile("\\b(truelead(?:\\.[a-z]+)+)\\.[A-Z]\\w*");

	/** An import: of a member where it is static, else of a class. */
	record Import(boolean member, String from, String name) {
	}

	static JavaSource of(String path, String text) {
		return new JavaSource(path, text, NO_CODE.matcher(text).replaceAll(found -> found.group().charAt(0) == '/' ? " " : "\"\""));
	}

	/** Whether it ships: no test, no benchmark. */
	boolean ships() {
		return path.contains("/src/main/") && !path.startsWith("tests/") || path.startsWith("plugin/editor/src/")
				|| path.startsWith("plugin/help/src/");
	}

	boolean in(String... folders) {
		return List.of(folders).stream().anyMatch(path::startsWith);
	}

	String packageName() {
		Matcher found = PACKAGE.matcher(text);
		return found.find() ? found.group(1) : "";
	}

	String fileName() {
		return path.substring(path.lastIndexOf('/') + 1);
	}

	int lines() {
		return (int) text.lines().count();
	}

	/** The lines that take more columns, where a tab takes some; what stands in text blocks is as wide as it is. */
	List<String> widerThan(int columns, int tab) {
		List<String> wide = new ArrayList<>();
		boolean block = false;
		int number = 0;
		for (String line : text.split("\n", -1)) {
			number++;
			int tabs = (int) line.chars().takeWhile(c -> c == '\t').count();
			if (!block && line.codePointCount(0, line.length()) + tabs * (tab - 1) > columns) {
				wide.add(path + ":" + number);
			}
			block ^= line.split("\"\"\"", -1).length % 2 == 0;
		}
		return wide;
	}

	List<Import> imports() {
		List<Import> imports = new ArrayList<>();
		for (Matcher found = IMPORT.matcher(text); found.find();) {
			imports.add(new Import(found.group(1) != null, found.group(2), found.group(3)));
		}
		return imports;
	}

	/** All but the imports, comments and all. */
	String body() {
		return IMPORT.matcher(text).replaceAll("");
	}

	/** Packages of ours that its code names, in imports or in full; its own left out. */
	List<String> leansOn() {
		return NAMED.matcher(code).results().map(found -> found.group(1)).filter(name -> !name.equals(packageName())).distinct().toList();
	}

	/**
	 * What is declared at the level of a type: methods, records, constants.
	 *
	 * @param line        from 1, where it begins
	 * @param overrides   whether it says again what a type above it declares
	 * @param doc         its Javadoc, on one line; of constants that follow each other without one the first one's
	 * @param declaration up to its body or value, on one line
	 */
	record Member(int line, boolean overrides, String doc, String declaration) {
	}

	/** All that begins at the start of a line of its own and is no statement. */
	List<Member> members() {
		List<Member> members = new ArrayList<>();
		String doc = "";
		boolean overrides = false;
		for (Matcher found = PIECE.matcher(text); found.find();) {
			if (found.group("override") != null) {
				overrides = true;
			} else if (found.group("doc") != null) {
				doc = found.group("doc").replaceAll("\\s*\\n\\s*\\*?", " ").strip();
			} else if (found.group("gap") != null) {
				doc = "";
			} else if (found.group("declared") != null) {
				String declaration = found.group("declared").replaceAll("\\s+", " ").strip();
				members.add(new Member(1 + (int) text.substring(0, found.start("declared")).chars().filter(c -> c == '\n').count(),
						overrides, doc, declaration));
				overrides = false;
				doc = declaration.contains("(") ? "" : doc;
			}
		}
		return members;
	}

	/** The lines of code in which a pattern is found, each with its place. */
	List<String> places(Pattern pattern) {
		List<String> places = new ArrayList<>();
		int number = 0;
		for (String line : blankedLines()) {
			number++;
			if (pattern.matcher(line).find()) {
				places.add(path + ":" + number + "  " + line.strip());
			}
		}
		return places;
	}

	/** The lines of the file with comments and strings blanked out, so that they count as in the file. */
	private String[] blankedLines() {
		return NO_CODE.matcher(text).replaceAll(found -> "\n".repeat((int) found.group().chars().filter(c -> c == '\n').count())
				+ (found.group().charAt(0) == '/' ? " " : "\"\"")).split("\n", -1);
	}
}
