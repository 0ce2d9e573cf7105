/**
 * Our notes in comments: a keyword, a colon, items parted by commas, in any order and any case.
 *
 *   THREAD: M6X1-6H, DEPTH 12, BLIND
 *   HOLE: BOTTOM 18, THROUGH 20
 *   TOOL: T5, FORM TAP, M6X1, LEAD 2.5
 *   STOCK: STEEL, 28 HRC
 *   SURFACE: Z0
 *   ALLOW: feed-off-pitch, FLOATING HOLDER 3
 *   MACHINE PROFILE: turning
 *
 * A remark on the material that people write without thinking of us, MATERIAL: 4140 28HRC, is taken for a STOCK note where it is understood.
 *
 * An item that is none of the known ones is kept as free text: a thread designation or a tool's name is read from it by the callout
 * grammar, and where that reads nothing there, the note is not understood.
 */
grammar Note;

options { caseInsensitive = true; }

note
    : THREAD COLON threadItem ( COMMA threadItem )* EOF # threadNote
    | HOLE COLON holeItem ( COMMA holeItem )* EOF       # holeNote
    | TOOL COLON toolItem ( COMMA toolItem )* EOF       # toolNote
    | ( STOCK COLON | MATERIAL ( COLON | EQUALS | OTHER ) ) stockItem ( COMMA stockItem )* EOF # stockNote
    | SURFACE COLON level EOF                           # surfaceNote
    | ALLOW COLON ruleName ( COMMA reason )? EOF        # allowNote
    | MACHINE PROFILE COLON ruleName EOF                # machineNote
    ;

threadItem
    : depthItem           # threadDepth
    | BLIND HOLE?        # threadBlind
    | THROUGH length?    # threadThrough
    | count              # threadCount
    | free               # threadFree
    ;

holeItem
    : BOTTOM EQUALS? length                     # holeBottom
    | depthItem                                  # holeDepth
    | ( WALL | THICK ) EQUALS? length           # holeWall
    | length ( WALL | THICK )                   # holeWall
    | THROUGH length?                           # holeThrough
    | BLIND                                     # holeBlind
    | diameter                                  # holeDiameter
    | free                                      # holeFree
    ;

toolItem
    : T EQUALS? NUMBER                                     # toolNumber
    | NUMBER                                               # toolNumber
    | diameter                                             # toolDiameter
    | LEAD EQUALS? lead                                    # toolLead
    | REACH EQUALS? length                                 # toolReach
    | ( TEETH | FLUTES ) EQUALS? NUMBER                    # toolTeeth
    | NUMBER ( TEETH | FLUTES )                            # toolTeeth
    | NOSE EQUALS? length                                  # toolNose
    | FLAT EQUALS? length                                  # toolFlat
    | ( ANGLE | POINT ) ANGLE? EQUALS? NUMBER DEGREES?     # toolAngle
    | PITCH EQUALS? length                                 # toolPitch
    | COMB                                                 # toolComb
    | SINGLE ( FORM | POINT )?                             # toolSingle
    | EDGE FEED                                            # toolEdgeFeed
    | ( TOOTH FEED | FEED TOOTH | FZ ) EQUALS? length      # toolToothFeed
    | HOLDER? EQUALS? holder HOLDER? ( EQUALS? length )?   # toolHolder
    | LIMIT EQUALS? free                                   # toolLimit
    | free                                                 # toolFree
    ;

/* As the trade writes it: 2.5, 2-3 threads, 3 mm, C, FORM C, DIN 2197 FORM C (2-3), modified bottoming. A cell of a tool list holds nothing else. */
lead
    : ( leadCount | leadWord )+
    ;

leadCell
    : lead EOF
    ;

leadCount
    : NUMBER ( ( TO | OTHER )? NUMBER )? unit?
    ;

leadWord
    : WORD | D | X | BOTTOM | FORM | TURNS | THREAD | PITCH | LEAD | EQUALS | COLON | OTHER
    ;

stockItem
    : ( hardness | ~( COMMA | HRC | HB | HV ) )+   # stockGiven
    | free                                     # stockFree
    ;

/* Of a range, 28-32 HRC, the harder end counts; in 4140 28 HRC the first number is the stock's name. */
hardness
    : NUMBER NUMBER? ( HRC | HB | HV )
    | ( HRC | HB | HV ) EQUALS? NUMBER NUMBER?
    ;

level
    : axis? EQUALS? NUMBER unit?
    ;

axis
    : X | Y | Z
    ;

depthItem
    : DEPTH EQUALS? length
    | length ( DEPTH | DEEP )
    ;

count
    : COUNT EQUALS? NUMBER
    | NUMBER ( X | HOLE | HOLES )
    ;

diameter
    : ( DIAMETER | D ) EQUALS? length
    | length DIAMETER
    ;

holder
    : RIGID | FLOATING | SYNCHRO | SELF OTHER? NUMBER? REVERSING
    ;

length
    : NUMBER unit?
    ;

unit
    : MM | INCH
    ;

ruleName
    : ~( COLON | COMMA )+
    ;

reason
    : .+?
    ;

free
    : ~COMMA+
    ;

THREAD    : 'THREAD' ;
HOLE      : 'HOLE' ;
TOOL      : 'TOOL' ;
STOCK     : 'STOCK' ;
MATERIAL  : 'MATERIAL' | 'MATL' | 'WERKSTOFF' | 'MATERIALE' | 'MATIERE' ;
SURFACE   : 'SURFACE' ;
ALLOW     : 'ALLOW' ;
MACHINE   : 'MACHINE' ;
PROFILE   : 'PROFILE' ;

DEPTH     : 'DEPTH' ;
DEEP      : 'DEEP' | 'DP' ;
BLIND     : 'BLIND' ;
THROUGH   : 'THROUGH' | 'THRU' ;
BOTTOM    : 'BOTTOM' ;
WALL      : 'WALL' ;
THICK     : 'THICK' | 'THICKNESS' ;
COUNT     : 'COUNT' | 'QTY' ;
HOLES     : 'HOLES' ;
DIAMETER  : 'DIAMETER' | 'DIA' | 'DIAM' ;
LEAD      : 'LEAD' ;
TURNS     : 'TURNS' | 'TURN' | 'THREADS' ;
REACH     : 'REACH' ;
TEETH     : 'TEETH' ;
FLUTES    : 'FLUTES' | 'FLUTE' | 'FL' ;
NOSE      : 'NOSE' ;
FLAT      : 'FLAT' ;
ANGLE     : 'ANGLE' ;
POINT     : 'POINT' ;
DEGREES   : 'DEGREES' | 'DEG' | '\u00B0' ;
PITCH     : 'PITCH' ;
COMB      : 'COMB' ;
SINGLE    : 'SINGLE' ;
FORM      : 'FORM' ;
EDGE      : 'EDGE' ;
FEED      : 'FEED' ;
TOOTH     : 'TOOTH' ;
FZ        : 'FZ' ;
HOLDER    : 'HOLDER' ;
RIGID     : 'RIGID' ;
FLOATING  : 'FLOATING' | 'FLOAT' | 'TENSION' ;
SYNCHRO   : 'SYNCHRO' | 'SYNC' ;
SELF      : 'SELF' ;
REVERSING : 'REVERSING' ;
LIMIT     : 'LIMIT' ;
TO        : 'TO' ;
HRC       : 'HRC' | 'RC' ;
HB        : 'HB' | 'HBW' | 'BHN' ;
HV        : 'HV' ;
MM        : 'MM' ;
INCH      : 'INCHES' | 'INCH' | 'IN' | '"' ;
T         : 'T' ;
D         : 'D' ;
X         : 'X' ;
Y         : 'Y' ;
Z         : 'Z' ;

COLON     : ':' ;
COMMA     : ',' | ';' ;
EQUALS    : '=' ;
NUMBER    : [+\-]? ( [0-9]+ ( '.' [0-9]* )? | '.' [0-9]+ ) ;
WORD      : [A-Z_]+ ;
SPACE     : [ \t\u00A0]+ -> skip ;
OTHER     : . ;
