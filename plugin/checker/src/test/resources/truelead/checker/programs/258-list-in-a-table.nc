%
O8008(TWO SETUPS, TOOL LIST IN TABLE)
(-------------------------------------------)
(| TOOL | DESCRIPTION           | H  | D   |)
(|   1  | SPOT DRILL 10MM 90DEG | H1 | D1  |)
(|   2  | DRILL 6.8MM           | H2 | D2  |)
(|   3  | TAP M8X1.25-6H        | H3 | D3  |)
(-------------------------------------------)
G21 G17 G90 G94
T1 M6
S2000 M3
G54 G0 X0 Y0
G43 H1 Z50.
G81 Z-4. R2. F200
X30.
G80
T2 M6
S2000 M3
G0 X0 Y0
G43 H2 Z50.
G83 Z-22. R2. Q5. F250
X30.
G80
T3 M6
S400 M3
G0 X0 Y0
G43 H3 Z50.
G84 Z-16. R5. F500
X30.
G80
M30
%
