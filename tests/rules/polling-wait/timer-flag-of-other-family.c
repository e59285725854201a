// device: atxmega32e5
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    TCC4.CTRLA = TC_CLKSEL_DIV1_gc;
    for (;;) {
        while (!(TCC4.INTFLAGS & TC4_OVFIF_bm)) { // finding: polling-wait TCC4.INTFLAGS proven
        }
        TCC4.INTFLAGS = TC4_OVFIF_bm;
        PORTD.OUTTGL = 1;
    }
}
