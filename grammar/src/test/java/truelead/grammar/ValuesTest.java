package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Variables, operators, functions and control statements. */
class ValuesTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
		"#2= 200.                                | #2:=200.",
		"# 100 = # 5221                          | #100:=#5221",
		"##1=#[#1+2]                             | ##1:=#[(#1 + 2)]",
		"#<depth>=[#3-1]                         | <depth>:=[(#3 - 1)]",
		"#< My Depth >=#<_global>                | <mydepth>:=<_global>",
		"#1=1+2*3**2                             | #1:=(1 + (2 * (3 ** 2)))",
		"#1=1-2-3                                | #1:=((1 - 2) - 3)",
		"#1=-#2**2                               | #1:=(-#2 ** 2)",
		"#1=#2MOD3/4                             | #1:=((#2 MOD 3) / 4)",
		"#1=#2EQ1AND#3GT-2ORNOT#4                | #1:=(((#2 EQ 1) AND (#3 GT -2)) OR NOT#4)",
		"#1=[#2 LT 1] XOR [#3 LE 1]              | #1:=([(#2 LT 1)] XOR [(#3 LE 1)])",
		"#1=ATAN[#1]/[#2]*2                      | #1:=(ATAN(#1,#2) * 2)",
		"#1=ATAN[#1]                             | #1:=ATAN(#1)",
		"#1=SIN[30]+COS[#2]-TAN[1]               | #1:=((SIN(30) + COS(#2)) - TAN(1))",
		"#1=ASIN[.5]*ACOS[.5]                    | #1:=(ASIN(0.5) * ACOS(0.5))",
		"#1=ROUND[#2/2]+FIX[#3]+FUP[#4]          | #1:=((ROUND((#2 / 2)) + FIX(#3)) + FUP(#4))",
		"#1=SQRT[#2]+ABS[-1]+LN[2]+EXP[1]        | #1:=(((SQRT(#2) + ABS(-1)) + LN(2)) + EXP(1))",
		"#1=BIN[#2]-BCD[#3]                      | #1:=(BIN(#2) - BCD(#3))",
		"#1=EXISTS[#<x>]                         | #1:=EXISTS(<x>)",
		"IF[#1EQ1AND#2GT3]GOTO100                | jump([((#1 EQ 1) AND (#2 GT 3))]->100)",
		"IF [#1 NE #0] GOTO [#2+5]               | jump([(#1 NE #0)]->[(#2 + 5)])",
		"IF [#1 GT 3] THEN #2=5                  | if([(#1 GT 3)]) #2:=5",
		"IF[#1LT5]THENG0X5                       | if([(#1 LT 5)]) G0 X5",
		"IF[#1 == 5] #2=1                        | if([(#1 EQ 5)]) #2:=1",
		"IF[#1 EQ 2] N100                        | jump([(#1 EQ 2)]->100)",
		"WHILE[#1LE10]DO1                        | while([(#1 LE 10)])do1",
		"DO 2                                    | while()do2",
		"END1                                    | end1",
		"N100GOTO20                              | N100 jump(->20)",
		"GOTO#1                                  | jump(->#1)",
		"o100 sub                                | o<100>sub()",
		"o<Holes> call [1] [#2+1]                | o<holes>call([1],[(#2 + 1)])",
		"O102while[#1 LT 5]                      | o<102>while([(#1 LT 5)])",
		"o103 repeat [3]                         | o<103>repeat([3])",
		"o101 elseif [#1 gt 0]                   | o<101>elseif([(#1 GT 0)])",
		"o[#1] call                              | o<[#1]>call()",
		"o100 endsub [#1]                        | o<100>endsub([#1])"
	})
	void valuesKeepTheirOrderOfOperations(String line, String shape) {
		assertThat(Shape.of(line)).isEqualTo(shape);
		assertThat(BlockReader.read(line).problems()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
		"R1=5 R2=(R1+2)*SIN(30)          | <r1>:=5 <r2>:=([(<r1> + 2)] * SIN(30))",
		"_X_HOME=0 _Y_HOME=-10           | <_x_home>:=0 <_y_home>:=-10",
		"CYCLES = _TIME / 15             | <cycles>:=(<_time> / 15)",
		"_LIST[2]=5                      | _LIST(2):=5",
		"SUPA G0 Z=_Z_HOME D0            | opaque{SUPA} G0 Z<_z_home> D0",
		"T=\"DRILL 8.5\" M6              | T'DRILL 8.5' M6",
		"MSG(\"HOLES; ALL\")             | MSG('HOLES; ALL')",
		"CYCLE800()                      | CYCLE800()",
		"CYCLE81(5,,2,-12.5)             | CYCLE81(5,?,2,-12.5)",
		"AGAIN:                          | AGAIN:",
		"N20 AGAIN: G0 X1                | N20 AGAIN: G0 X1",
		"IF R1>5 GOTOF AGAIN             | jump((<r1> GT 5)-><again>)",
		"IF (R1 > 5) AND (R2 < 3) GOTOB N100 | jump(([(<r1> GT 5)] AND [(<r2> LT 3)])->100)",
		"G1 X=IC(5) Y=AC(R1*2)           | G1 XIC(5) YAC((<r1> * 2))",
		"G2 X1 Y2 I3 TURN=2              | G2 X1 Y2 I3 <turn>:=2",
		"DEF REAL _X, _Y=5               | def(<_x>,<_y>)(?,5)",
		"DEF INT COUNT                   | def(<count>)(?)",
		"G81 Z-18 ER2 EF0                | G81 Z-18 R2 opaque{EF0}",
		"[BILLET X28 Z60                 | opaque{BILLET}",
		"EXTERN WARM(REAL, REAL)         | opaque{EXTERN}",
		"PROC WARM(REAL _A, INT _B=-2)   | proc{WARM}(<_a>,<_b>)(?,-2)",
		"PROC WARM SAVE                  | proc{WARM}()()",
		"TRANS X1 Y2                     | opaque{TRANS}",
		"FOR COUNT = 1 TO CYCLES         | for(<count>,1,<cycles>)",
		"FOR R1=0 TO (R2-1)*2            | for(<r1>,0,([(<r2> - 1)] * 2))",
		"N10 IF COUNT < 1 ; ONE          | N10 if((<count> LT 1)) semicolon{ ONE}",
		"IF (R1==1) AND NOT (R2<>2)      | if(([(<r1> EQ 1)] AND NOT[(<r2> NE 2)]))",
		"ELSEIF R1>=2                    | elseif((<r1> GE 2))",
		"ELSE                            | else()",
		"ENDIF                           | endif()",
		"WHILE R1<=R2                    | while((<r1> LE <r2>))",
		"ENDWHILE                        | endwhile()",
		"LOOP                            | loop()",
		"ENDLOOP                         | endloop()",
		"ENDFOR                          | endfor()",
		"REPEAT                          | repeat()",
		"UNTIL (R1+1)>5                  | until(([(<r1> + 1)] GT 5))",
		"REPEAT ROW P=R3                 | repeat{<row>>}*<r3>",
		"REPEAT FIRST LAST P4            | repeat{<first>><last>}*4",
		"REPEAT N10 N20 P=3              | repeat{10>20}*3",
		"REPEAT N10 P4                   | repeat{10>}*4",
		"CASE R1 OF 1 GOTOF ONE 2 GOTOF N20 DEFAULT GOTOB REST | case(<r1>)(1,2)->(<one>,20)else<rest>",
		"LOOP: X5                        | LOOP: X5",
		"GOTOB LOOP                      | jump(-><loop>)",
		"MCALL HOLE(5,,-3)               | modal{HOLE}(5,?,-3)",
		"MCALL                           | modal{}()",
		"CALL HOLES                      | HOLES()",
		"CALL \"HOLES\"                    | HOLES()",
		"HOLES P3                        | HOLES()*3",
		"HOLES P=R1                      | HOLES()*<r1>",
		"R[R1+1]=R[2]*2                  | R((<r1> + 1)):=(R(2) * 2)",
		"M0 FOR M8 TAP                   | M0 opaque{FOR}",
		"CALL 5 MINUTES BEFORE           | opaque{CALL}",
		"LOOP AROUND THE BOSS            | opaque{LOOP}",
		"TO BE REPEATED UNTIL DONE       | opaque{TO}",
		"DEF BOSS                        | opaque{DEF}",
		"DPRNT[X#1[35]*Y#2[35]]          | opaque{DPRNT}",
		"MSG(\"HOLE \"<<R1<<\" OF \"<<R2) | MSG(((('HOLE ' << <r1>) << ' OF ') << <r2>))",
		"MSG(<<R1)                       | MSG(<<<r1>)",
		"V.P.COUNT=P.HOLES+1             | <v.p.count>:=(<p.holes> + 1)",
		"IF [VC1 GE 10] NEND             | jump([(<vc1> GE 10)]-><nend>)",
		"IF [VC1 GE 10] N100             | jump([(<vc1> GE 10)]->100)",
		"NLAP1 G0 X20                    | NLAP1: G0 X20",
		"NEND M2                         | NEND: M2",
		"G0 XL1 YL12 Z5                  | G0 X<l1> Y<l12> Z5",
		"G79 L1<100 N35                  | G79 L1 opaque{G79}",
		"NOTE M8 IS ON                   | opaque{NOTE}",
		"GOTOF \"ENDE\"                  | jump(->'ENDE')",
		"SETVN101[DEPTH]                 | opaque{SETVN101}",
		"POPEN                           | opaque{POPEN}",
		"G17 G90 FNORM                   | G17 G90 opaque{FNORM}",
		"M117 2D Outline1                | M117 opaque{OUTLINE1}",
		"M0 Attach probe                 | M0 opaque{ATTACH}",
		"M0 NO GO                        | M0 opaque{NO}",
		"M00 GO ON                       | M0 opaque{GO}",
		"TOOL CALL 5 Z S3000             | opaque{TOOL}",
		"5 L X+10 Y+10 R0 FMAX M3        | opaque{FMAX}",
		"A bracket of steel              | opaque{BRACKET}",
		"$1                              | opaque{$1}",
		"(UPPER) $1 (TURRET)             | parentheses{UPPER} opaque{$1} parentheses{TURRET}",
		"!2L1                            | opaque{!2}"
	})
	void richerStatementsAreNoProblem(String line, String shape) {
		assertThat(Shape.of(line)).isEqualTo(shape);
		assertThat(BlockReader.read(line).problems()).isEmpty();
	}
}
