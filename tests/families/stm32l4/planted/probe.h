#ifndef PROBE_H
#define PROBE_H
void probe_prepare(void);
unsigned probe_wetness(void);
#endif
