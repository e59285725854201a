// device: atxmega32a4u
// rules: floating-pin, analog-pin-buffer-on, clock-output-on, busy-wait-delay, polling-wait, superloop-without-sleep, sleep-disabled, locked-write, asleep-in-mode, peripheral-on-in-sleep
// A protected write without its key, then a sleep without its enable bit.
#include <avr/interrupt.h>
#include <avr/io.h>

EMPTY_INTERRUPT(PORTB_INT0_vect)

int main(void)
{
    static PORT_t *const all[] = { &PORTA, &PORTB, &PORTC, &PORTD, &PORTE, &PORTR };
    for (uint8_t i = 0; i < 6; i++)
        all[i]->DIR = 0xff;
    PORTB.DIRCLR = PIN2_bm;
    PORTB.PIN2CTRL = PORT_OPC_PULLUP_gc | PORT_ISC_BOTHEDGES_gc;
    PORTB.INT0MASK = PIN2_bm;
    PORTB.INTCTRL = PORT_INT0LVL_LO_gc;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    OSC.CTRL |= OSC_RC32MEN_bm;
    while (!(OSC.STATUS & OSC_RC32MRDY_bm))
        ;
    CLK.CTRL = CLK_SCLKSEL_RC32M_gc; // finding: locked-write CLK.CTRL proven
    SLEEP.CTRL = SLEEP_SMODE_PDOWN_gc;
    sei();
    for (;;) {
        __asm__ __volatile__("sleep" ::: "memory"); // finding: sleep-disabled SLEEP proven error
    }
}
