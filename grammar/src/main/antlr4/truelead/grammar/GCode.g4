/*
 * One block (one line) of a word-address program, as turning and milling controls and RS-274 read it, with room for the statements of
 * richer control languages. Nothing here can fail: every token can begin a part, closing marks are optional, and a token MISSING stands
 * where a value is left out, so that the tree builder can say exactly what is missing and where.
 *
 * Tokens: letters in a row make a NAME ("GOTO", "SUPA", "_X_HOME"), a letter alone is an address. Words run together ("GOTO100",
 * "1AND#2") are cut by GluedName. A parenthesis is a comment unless it follows a name, an equals sign or an operator; Parentheses decides.
 */
grammar GCode;

options { caseInsensitive = true; }

/* MISSING stands where a value is expected and none begins, put in by Gaps; R_PLANE is what some controls write for the R of a cycle: ER, and R0
   before a number with a sign, R0+.1 (both from memory). */
tokens { MISSING, R_PLANE }

@lexer::header {
import org.antlr.v4.runtime.misc.Interval;
}

@lexer::members {
	private Token before;
	private Token secondBefore;
	private int openCalls;
	private boolean assigned;
	private boolean computed;

	@Override
	public void emit(Token token) {
		super.emit(token);
		secondBefore = before;
		before = token;
		computed |= token.getType() == HASH || token.getType() == VARIABLE_NAME || token.getType() == LBRACK;
		assigned |= token.getType() > 0 && Parentheses.OPENS_VALUES.get(token.getType());
	}

	@Override
	public void reset() {
		super.reset();
		before = null;
		secondBefore = null;
		openCalls = 0;
		assigned = false;
		computed = false;
	}

	private boolean opensValue() {
		return openCalls > 0 || Parentheses.openValue(_input, before, assigned);
	}

	/** Where the name of a program may stand in angle brackets: at the start of a block, behind P, G65, G66 and M98. Anywhere else its bracket compares. */
	private boolean opensName() {
		boolean call = secondBefore != null && secondBefore.getType() == LETTER && before.getType() == NUMBER
				&& (secondBefore.getText().equalsIgnoreCase("M") ? before.getText().equals("98") : before.getText().equals("65") || before.getText().equals("66"));
		return before == null || call || before.getType() == LETTER && before.getText().equalsIgnoreCase("P");
	}

	/** Some texts end each block by a star, as paper tapes did; where values are computed a star is a sign that lacks one. */
	private void star() {
		if (_tokenStartCharIndex > 0 && !computed && _input.getText(Interval.of(_input.index(), _input.size() - 1)).isBlank()) {
			setType(REMARK);
		}
	}

	/** Whether a number with a sign follows right behind an address and a number that are not part of a computation. */
	private boolean signFollows() {
		int behind = _input.LA(2);
		return !assigned && (before == null || before.getType() == NUMBER) && (_input.LA(1) == '+' || _input.LA(1) == '-')
				&& (behind == '.' || Character.isDigit(behind));
	}

	/** Whether a dollar sign stands behind a word and before one digit; before more, S was typed with the wrong shift key. */
	private boolean spindleFollows() {
		boolean behindWord = before != null && (before.getType() == NUMBER || before.getType() == RBRACK);
		int behind = _input.LA(2);
		return behindWord && Character.isDigit(_input.LA(1)) && !Character.isDigit(behind) && behind != '.';
	}

	private void comment() {
		_input.seek(Parentheses.commentEnd(_input, _tokenStartCharIndex));
	}

	private void name() {
		boolean target = before != null && before.getType() == GOTO;
		GluedName cut = GluedName.of(_input, _tokenStartCharIndex, _input.index(), assigned || target);
		setType(target && GluedName.mayNameLabel(cut.type()) ? NAME : cut.type());
		_input.seek(_tokenStartCharIndex + cut.length());
	}
}

block
    : part* EOF
    ;

part
    : mark=(COMMENT | REMARK | SLASHES | STRING | BRACKETED)            # remark
    | PERCENT                                               # percent
    | SLASH NUMBER?                                         # blockDelete
    | COLON NUMBER?                                         # programNumber
    | NAME COLON                                            # label
    | oTarget oKeyword group*                               # oStatement
    | O operand?                                            # oWord
    | O_NAME                                                # oNameAlone
    | variable (EQUALS expression)?                         # assignment
    | NAME EQUALS expression                                # namedAssignment
    | NAME list (EQUALS expression)?                        # namedAssignment
    | NAME call                                             # statement
    | IF expression (THEN | GOTO expression | blockOfJump)? # condition
    | WHILE expression (DO expression)?                     # loop
    | DO operand?                                           # loopAlone
    | END operand?                                          # loopEnd
    | GOTO expression                                       # jump
    | control=(ELSEIF | UNTIL) expression                   # conditionalControl
    | FOR expression (TO expression)?                       # countedLoop
    | REPEAT (blockName blockName? (LETTER (EQUALS expression | NUMBER)?)?)?  # repetition
    | CASE expression (OF choice*)?                         # choices
    | DEF declared (COMMA declared)*                        # definition
    | PROC (NAME (LPAREN declared (COMMA declared)* RPAREN?)? NAME*)?   # procedure
    | called=(CALL | MCALL) (STRING | NAME call?)?          # calling
    | LETTER operand? (EQUALS expression)?                  # word
    | POLAR operand?                                        # polarWord
    | R_PLANE operand?                                      # planeWord
    | COMMA (LETTER operand?)?                              # corner
    | group                                                 # strayGroup
    | MISSING                                               # gap
    | (NAME | THEN | TO | OF | O_KEYWORD | CONTROL)         # keyword
    | (NUMBER | DOT | RBRACK | LPAREN | RPAREN | EQUALS | PLUS | MINUS | STAR | POWER | SIGN_COMPARE | WORD_COMPARE | LOGIC | MOD | NOT
      | FUNCTION | ATAN | MANY_POINTS | EXPONENT | JOIN | OTHER)              # stray
    ;

oTarget
    : O_NAME
    | O (NUMBER | variable | group)
    ;

oKeyword
    : O_KEYWORD
    | CALL
    | ELSEIF
    | REPEAT
    | IF
    | WHILE
    | DO
    ;

/* A label or a block number, where a number behind another letter is how often. */
blockName
    : NAME
    | {_input.LT(1).getText().equalsIgnoreCase("N")}? LETTER NUMBER
    ;

/* IF [VC1 GE 10] NEND, IF [VC1 EQ 1] N100: some controls jump without a word for it. */
blockOfJump
    : {_input.LT(1).getText().toUpperCase(java.util.Locale.ROOT).startsWith("N")}? (NAME | LETTER NUMBER)
    ;

/* A value and where to go where the CASE has it. */
choice
    : expression (GOTO expression)?
    ;

/* What a DEF or PROC statement declares: words of its type, then its name or name = value. */
declared
    : expression+
    ;

/* What may stand behind an address letter: a signed number, variable, bracket or function. */
operand
    : sign+ atom?
    | atom
    ;

sign
    : PLUS
    | MINUS
    ;

atom
    : NUMBER                                                # number
    | MANY_POINTS                                           # manyPoints
    | EXPONENT                                              # exponent
    | variable                                              # variableValue
    | group                                                 # groupValue
    | ATAN group (SLASH group)?                             # arcTangent
    | (FUNCTION | ATAN) (list | call)                       # function
    | (FUNCTION | ATAN) (NUMBER | variable)?                # bareFunction
    | (STRING | BRACKETED)                                  # string
    ;

variable
    : VARIABLE_NAME
    | HASH+ (NUMBER | VARIABLE_NAME | group)?
    ;

group
    : LBRACK expression RBRACK?
    ;

/* RS-274: signs, powers, products, sums, comparisons, logic; operators of one rank from left to right. */
expression
    : (PLUS | MINUS | NOT | JOIN) expression                # signed
    | expression POWER expression                           # binary
    | expression (STAR | SLASH | MOD) expression            # binary
    | expression (PLUS | MINUS) expression                  # binary
    | expression (SIGN_COMPARE | WORD_COMPARE | EQUALS) expression  # binary
    | expression LOGIC expression                           # binary
    | expression JOIN expression                            # binary
    | atom                                                  # value
    | LPAREN expression RPAREN?                             # parenthesized
    | NAME (list | call)?                                   # name
    | LETTER (NUMBER | group)?                              # letterName
    | MISSING                                               # missing
    ;

list
    : LBRACK expression (COMMA expression)* RBRACK?
    ;

call
    : LPAREN expression (COMMA expression)* RPAREN?
    ;

LPAREN        : '(' { opensValue() }? { openCalls++; } ;
COMMENT       : '(' { comment(); } ;
REMARK        : ';' ~[\r\n]* ;
SLASHES       : '//' ~[\r\n]* ;
/* $PART1.MIN% is the first line of a program on some controls (from memory). */
PERCENT       : '%' ~[\r\n]* | '$' [A-Z0-9_-]+ '.' [A-Z]+ '%' ;
STRING        : '"' ~["\r\n]* '"'? ;

/* The question stands behind the first sign: before it, it would be asked at every token, and the lexer could keep nothing in its caches. */
BRACKETED     : '<' { opensName() }? ~[<>\r\n]* '>' ;
O_NAME        : 'O' SPACE* '<' ~[<>\r\n]* '>' ;
VARIABLE_NAME : '#' SPACE* '<' ~[<>\r\n]* '>' ;
NUMBER        : DIGIT+ ('.' DIGIT*)? | '.' DIGIT+ ;

IF            : 'IF' ;
THEN          : 'THEN' ;
WHILE         : 'WHILE' ;
DO            : 'DO' ;
END           : 'END' ;
GOTO          : 'GOTO' [FBCS]? ;
FOR           : 'FOR' { name(); } ;
TO            : 'TO' { name(); } ;
ELSEIF        : 'ELSEIF' { name(); } ;
UNTIL         : 'UNTIL' { name(); } ;
CASE          : 'CASE' { name(); } ;
OF            : 'OF' { name(); } ;
DEF           : 'DEF' { name(); } ;
PROC          : 'PROC' { name(); } ;
CALL          : 'CALL' { name(); } ;
MCALL         : 'MCALL' { name(); } ;
REPEAT        : 'REPEAT' { name(); } ;
CONTROL       : ('LOOP' | 'ENDLOOP' | 'ENDFOR') { name(); } ;
O_KEYWORD     : ('SUB' | 'ENDSUB' | 'ELSE' | 'ENDIF' | 'ENDWHILE' | 'ENDREPEAT' | 'BREAK' | 'CONTINUE' | 'RETURN') { name(); } ;
WORD_COMPARE  : 'EQ' | 'NE' | 'GT' | 'GE' | 'LT' | 'LE' ;
LOGIC         : 'AND' | 'OR' | 'XOR' ;
MOD           : 'MOD' ;
NOT           : 'NOT' ;
ATAN          : 'ATAN' { name(); } ;
FUNCTION      : ('SIN' | 'COS' | 'TAN' | 'ASIN' | 'ACOS' | 'SQRT' | 'SQR' | 'ABS' | 'ROUND' | 'RND' | 'FIX' | 'FUP' | 'LN' | 'EXP' | 'BIN' | 'BCD'
                | 'ADP' | 'POW' | 'EXISTS') { name(); } ;
MANY_POINTS   : DIGIT* '.' DIGIT* '.' (DIGIT | '.')* ;
EXPONENT      : DIGIT* '.' DIGIT* 'E' [+\-] DIGIT DIGIT+ ;
O             : 'O' ;
LETTER        : [A-Z] ;
NAME          : ( [A-Z] (NAME_START | [A-Z]) | NAME_START ) (NAME_START | [A-Z] | DIGIT)* { name(); } ;

R_REGISTER    : 'R0' { signFollows() }? { setType(GCodeParser.R_PLANE); } ;

/* Variables of some controls have points in their names: V.P.COUNT, P.HOLES. */
DOTTED        : ( 'V' '.' [A-Z] | 'P' ) '.' [A-Z_] [A-Z_0-9.]* -> type(NAME) ;

POWER         : '**' ;
STAR          : '*' { star(); } ;
SLASH         : '/' ;
PLUS          : '+' ;
MINUS         : '-' ;
/* Puts texts together: "HOLE "<<R1 */
JOIN          : '<<' ;
SIGN_COMPARE  : '==' | '<>' | '!=' | '>=' | '<=' | '>' | '<' ;
EQUALS        : '=' ;
HASH          : '#' ;
LBRACK        : '[' ;
RBRACK        : ']' ;
RPAREN        : ')' { openCalls = Math.max(0, openCalls - 1); } ;
COMMA         : ',' ;
COLON         : ':' ;
DOT           : '.' ;
SPACES        : SPACE+ -> skip ;
/* RS-274: a radius about the program's zero, and an angle there. */
POLAR         : '@' | '^' ;
/* Which spindle the words before it are for, as RS-274 has it with several (from memory): M3 S400 $1. */
SPINDLE       : '$' { spindleFollows() }? { setType(GCodeParser.POLAR); } ;
OTHER         : . ;

fragment DIGIT      : [0-9] ;
/* Control characters, NUL, Ctrl-Z, byte order marks and the wide spaces of word processors count as white space. */
fragment SPACE      : [\u0000-\u0020\u007F-\u00A0\u1680\u2000-\u200F\u2028-\u202F\u205F-\u206F\u3000\uFEFF\uFFFE] ;
/* Underscore, and any letter outside ASCII: only names of richer languages and prose have them. */
fragment NAME_START : '_' | '$' [A-Z_] | FOREIGN ;
fragment FOREIGN options { caseInsensitive = false; }
    : [\u00AA\u00B5\u00BA\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u167F\u1681-\u1FFF\u2C00-\u2FFF\u3001-\uDFFF\uF900-\uFDFF\uFE70-\uFEFC\uFF10-\uFFDC]
    ;
