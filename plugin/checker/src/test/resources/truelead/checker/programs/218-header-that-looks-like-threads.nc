; part: cover plate, dwg 12345-m8, rev 1/4
; date 10-24-2026  tel 555-0132
; stock 120 x 80 x 20 al
g21 g90 g17 g94 ; metric
t1 m6 ; 6.8 drill
s2500 m3
g43 h1 z50
g0 x10 y10
g83 z-22 r2 q5 f250
x50
x90
g80
g0 z50
t2 m6 ; m8 tap
s400 m3
g43 h2 z50
g0 x10 y10
g84 z-16 r5 f500
x50
x90
g80
g0 z50 m5
m30
