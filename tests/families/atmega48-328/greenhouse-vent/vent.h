#ifndef VENT_H
#define VENT_H

enum vent_drive {
    VENT_STILL,
    VENT_OPENING,
    VENT_CLOSING,
};

void vent_drive(enum vent_drive drive);

#endif
