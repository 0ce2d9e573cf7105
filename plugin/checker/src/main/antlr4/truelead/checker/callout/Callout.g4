/*
 * How people write threads and tools in the comments of a program: M8X1.25-6H, #10-32 UNF, 13/64 DRILL, 12 DEEP.
 *
 * The words of the trade (tap, Gewindebohrer, taraud…) are no keywords of this grammar but data: words.csv says what each means,
 * and CalloutWords gives the token its type before the parser sees it. Reading never fails: whatever fits nothing is other text.
 */
grammar Callout;

options { caseInsensitive = true; }

tokens {
	M, MJ, TIMES_PH, PH, P, D, LETTER, NO, SERIES, SERIES_LETTER, TPI, LEFT, RIGHT, HAND, DEPTH, DIA, MM, INCH, DEG, INCH_MARK,
	LETTER_WORD, TR, RD, S, STUB, TYPED
}

@parser::members {
	/* The whole part of a mixed number has no decimals, and as a diameter no dash apart: D0.35 1/4-18 and D=11 - 3/8 NPT are a diameter and a thread. */
	private boolean integer() {
		String text = _input.LT(1).getText();
		Token before = _input.LT(-1);
		int mark = before == null ? Token.EOF : before.getType();
		boolean diameter = mark == DIA || mark == D || mark == DIA_SIGN || mark == DOT || mark == EQUALS || mark == COLON;
		boolean apart = _input.LA(2) == DASH && _input.LT(1).getStopIndex() + 1 < _input.LT(2).getStartIndex();
		return text.indexOf('.') < 0 && text.indexOf(',') < 0 && !(diameter && apart);
	}

	/* Only 11 1/2 (NPT) and 4 1/2 (UNC) threads an inch have a half. */
	private boolean half() {
		String whole = _input.LT(-1).getText();
		int at = _input.LA(1) == DASH ? 2 : 1;
		return (whole.equals("11") || whole.equals("4")) && _input.LT(at).getText().equals("1") && _input.LT(at + 2).getText().equals("2");
	}

	private boolean saidAgain() {
		String text = _input.LT(1).getText().toUpperCase(java.util.Locale.ROOT).replace(".", "");
		return text.equals("BSP") || text.equals("BSPP") || text.equals("BSPT") || text.equals("GAS");
	}

	/* Of whole numbers: STEP DRILL 5.0/6.6 has two diameters. */
	private boolean fraction() {
		String text = _input.LT(1).getText() + _input.LT(3).getText();
		return text.indexOf('.') < 0 && text.indexOf(',') < 0;
	}
}

@lexer::members {
	/* Of TAP,1/4-20 the comma parts words. */
	private boolean apart() {
		return _tokenStartCharIndex == 0 || !Character.isLetterOrDigit(_input.getText(Interval.of(_tokenStartCharIndex - 1, _tokenStartCharIndex - 1)).charAt(0));
	}
}

/* One piece of a comment; CommentPhrases hands out the longest run of tokens that is one. */
only : item EOF ;

item : multiplied | thread | deep | diameter | gauge | angle | code | amount | word | other ;

/* 4X M6, 4-M6, (4) M6 */
multiplied : NUMBER (TIMES | DASH)? metric
           | LPAREN NUMBER RPAREN thread
           | NUMBER TIMES inch ;

thread : metric | perInch | inch ;

metric : (M | MJ | TR | S) size=NUMBER metricPitch? extent? tail* (after | lengths)? bore? ;

/* Rd 20x1/8, W 21.8x1/14: a diameter in mm and threads an inch */
perInch : (RD | SERIES_LETTER) size=NUMBER TIMES one=NUMBER SLASH tpi=NUMBER tail* ;

metricPitch : TIMES lead=NUMBER LPAREN? P each=NUMBER RPAREN?
            | (TIMES_PH | TIMES? PH) lead=NUMBER P each=NUMBER
            | TIMES pitch=NUMBER MM?
            | TIMES? P pitch=NUMBER
            | DASH pitch=NUMBER ;

inch : series DASH? inchSize ((DASH | TIMES) turns TPI?)? british? extent? tail* after?
     | SERIES_LETTER inchSize (DASH turns)? british? extent? pipeClass=LETTER? tail*
     | inchSize DASH? series extent? tail* after?
     | inchSize (DASH | TIMES) turns TPI? (DASH? series)? extent? tail* after?
     | inchSize blankTurns=NUMBER DASH? series extent? tail* after?
     ;

series : STUB? SERIES STUB? ;

/* G 1/2 BSP: what G, R and RC say already */
british : {saidAgain()}? SERIES ;

/* threads an inch: 20, 11.5, 11 1/2 */
turns : NUMBER ({half()}? DASH? NUMBER SLASH NUMBER)? ;

/* M8X1.25X20, 1/4-20 X 1/2: how deep */
extent : TIMES dimension (MM | INCH | INCH_MARK)? ;

/* M6X1-6H X 12 */
after : extent ;

/* M6-6H 12/16: how deep the thread is, and the hole */
lengths : NUMBER SLASH NUMBER ;

/* M12X16/10.2X20, ISO 6410-1: behind the thread's length the drill, and how deep it goes */
bore : SLASH (DIA | DIA_SIGN)? NUMBER TIMES NUMBER ;

/* 6H, or a fit: 6H/6g, 2B/2A, the hole's class first (ISO 965-1) */
tail : DASH? (METRIC_CLASS (SLASH METRIC_CLASS)? | UNIFIED_CLASS (SLASH UNIFIED_CLASS)? | ACME_CLASS) | DASH? hand ;

hand : (LEFT | RIGHT) DASH? HAND? ;

inchSize : mark? dimension (INCH_MARK | INCH | MM)? ;

mark : HASH | NO DOT? HASH? ;

dimension : {integer()}? whole=NUMBER DASH? numerator=NUMBER SLASH denominator=NUMBER
          | {fraction()}? numerator=NUMBER SLASH denominator=NUMBER
          | decimal=NUMBER ;

/* 15 DEEP, X 15 DEEP, DEPTH 15, THR-DEP 16 */
deep  : TIMES? dimension unit? DEPTH
      | DEPTH DOT? (EQUALS | COLON | DASH)? dimension unit?
      | DEPTH_SIGN dimension unit? ;

diameter : (DIA | DIA_SIGN | D) DOT? (EQUALS | COLON)? dimension unit?
         | DIA DOT? DASH dimension unit?
         | dimension unit? (DIA DOT? | DIA_SIGN) ;

/* #7, NO. 7, LETTER F */
gauge : mark NUMBER | LETTER_WORD letter ;

letter : LETTER | P | D | M | TIMES | SERIES_LETTER | S ;

angle : NUMBER (DEG | DEGREE_SIGN) ;

/* T5, S1200, G43: words of a block named in prose */
code : letter NUMBER ;

amount : dimension unit? ;

unit : MM | INCH | INCH_MARK ;

word : TYPED | WORD | DEPTH | DIA | LETTER_WORD | NO | SERIES | TPI | LEFT | RIGHT | HAND | MM | INCH | DEG | MJ | TR | RD | STUB | PH | TIMES_PH | letter ;

other : ~(TYPED | WORD) ;

NUMBER        : [0-9]+ ('.' [0-9]* | ',' [0-9]+)? | '.' [0-9]+ | ',' [0-9]+ {apart()}? ;
/* The number of D.10.25, or D.6,8: the first point belongs to the D. */
MARKED        : '.' [0-9]+ '.' [0-9]+ | '.' [0-9]+ ',' [0-9]+ {_tokenStartCharIndex > 0 && Character.isLetter(_input.getText(Interval.of(_tokenStartCharIndex - 1, _tokenStartCharIndex - 1)).charAt(0))}? ;
METRIC_CLASS  : [3-9] [HG] ([3-9] [HG])? 'X'? {!Character.isLetterOrDigit(_input.LA(1))}? ;
ACME_CLASS    : [2-6] [GC] {!Character.isLetterOrDigit(_input.LA(1)) && (_input.LA(-3) == '-' || _input.LA(-3) == ' ')}? ;
UNIFIED_CLASS : [123] [AB] {!Character.isLetterOrDigit(_input.LA(1))}? ;
/* The second is the first as a wrong code page shows it. */
DIA_SIGN      : [ØΦ⌀] | 'Ã˜' ;
/* A sign that a code page has lost, by itself: what it was nobody knows. */
LOST          : ('\uFFFD' | 'ï¿½') {!Character.isLetterOrDigit(_input.LA(1))}? -> channel(HIDDEN) ;
DOTTED        : ([LR] '.' 'H' | 'N' '.' 'P' '.' 'T' | 'B' '.' 'S' '.' [PWF] | 'B' '.' 'A' | 'U' '.' 'N' '.' [CF] | 'S' '.' 'T' '.' 'I') '.'? ;
WORD          : LETTERS+ ;
HASH          : [#№] ;
DASH          : [-\u2010-\u2015\u2212] ;
SLASH         : [/\u2044] ;
TIMES         : [*×] ;
EQUALS        : '=' ;
COLON         : ':' ;
DOT           : '.' ;
LPAREN        : '(' ;
RPAREN        : ')' ;
DEGREE_SIGN   : [°º] ;
DEPTH_SIGN    : [\u21A7] ;
QUOTE         : ["″”“] ;
SPACE         : [ \t\u00A0\r\n_]+ -> channel(HIDDEN) ;
ANY           : . ;

/* Java tells what is a letter: the set of all letters would be put together anew at every start, which takes longer than a small program's check. */
fragment LETTERS : [A-Z] | [\u0080-\u{10FFFF}] {Character.isLetter(_input.LA(-1))}? ;
