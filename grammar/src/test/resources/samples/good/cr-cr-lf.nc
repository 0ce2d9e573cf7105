G0 X1.
G0 X2.
M30
