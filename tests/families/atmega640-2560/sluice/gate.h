#ifndef GATE_H
#define GATE_H

enum gate {
    GATE_OPEN,
    GATE_CLOSED,
};

void gate_move(enum gate to);

#endif
