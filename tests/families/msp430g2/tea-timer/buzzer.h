#ifndef BUZZER_H
#define BUZZER_H

void buzzer_on(void);
void buzzer_off(void);

#endif
