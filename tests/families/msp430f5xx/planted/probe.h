#ifndef PROBE_H
#define PROBE_H

void probe_init(void);
void probe_log(void);

#endif
