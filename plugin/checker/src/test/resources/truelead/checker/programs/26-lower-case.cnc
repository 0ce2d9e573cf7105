( plate with 4 x m5 )
g21 g90 g17
t1 m6 ( 4.2 drill )
s2200 m3
g0 x5 y5
g43 h1 z10 m8
g83 z-15 r1 q2 f200
x45
y45
x5
g80 m9
g0 z50
t2 m6 ( m5 tap )
s500 m3
g0 x5 y5
g43 h2 z10 m8
g84 z-10 r3 f400
x45
y45
x5
g80 m9
g0 z50
m30
