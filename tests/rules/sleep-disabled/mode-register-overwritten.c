// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    SLEEP.CTRL = SLEEP_SEN_bm;
    SLEEP.CTRL = SLEEP_SMODE_PDOWN_gc;
    for (;;) {
        sleep_cpu(); // finding: sleep-disabled SLEEP proven error
    }
}
