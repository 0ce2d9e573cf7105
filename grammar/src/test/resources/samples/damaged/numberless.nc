G0 X Y5.
Z-
#1=
