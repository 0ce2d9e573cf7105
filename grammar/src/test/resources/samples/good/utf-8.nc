(ГАЙКА М8) (ねじ) (tornillo de fijación)
G0 X1.
