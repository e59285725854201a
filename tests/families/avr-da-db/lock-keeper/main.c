// device: avr64db32
// flags: -DF_CPU=4000000UL -Wall
// Watches the battery of a bicycle lock with the comparator in standby; a button wakes it too.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

#define BUTTON_bm PIN2_bm
#define BUZZER_bm PIN3_bm

static volatile uint8_t alarms;

ISR(AC0_AC_vect)
{
    AC0.STATUS = AC_CMPIF_bm;
    alarms++;
}

ISR(PORTA_PORT_vect)
{
    PORTA.INTFLAGS = BUTTON_bm;
    alarms = 0;
}

static void pins_init(void)
{
    PORT_t *const ports[] = { &PORTA, &PORTC, &PORTD, &PORTF };

    PORTA.PINCONFIG = PORT_ISC_INPUT_DISABLE_gc;
    for (uint8_t i = 0; i < sizeof ports / sizeof ports[0]; i++) {
        ports[i]->PINCTRLUPD = 0xFF;
    }
    /* The button gets its buffer back, its pull-up and, being pin 2, any edge. */
    PORTA.PINCTRLCLR = BUTTON_bm;
    PORTA.PINCONFIG = PORT_PULLUPEN_bm | PORT_ISC_RISING_gc;
    PORTA.PINCTRLSET = BUTTON_bm;
    PORTA.DIRSET = BUZZER_bm;
}

int main(void)
{
    pins_init();
    VREF.ACREF = VREF_REFSEL_2V048_gc;
    AC0.DACREF = 128;
    AC0.MUXCTRL = AC_MUXPOS_AINP0_gc | AC_MUXNEG_DACREF_gc;
    AC0.INTCTRL = AC_CMP_bm;
    AC0.CTRLA = AC_POWER_PROFILE2_gc | AC_RUNSTDBY_bm | AC_ENABLE_bm;

    set_sleep_mode(SLEEP_MODE_STANDBY);
    for (;;) {
        if (alarms) {
            PORTA.OUTSET = BUZZER_bm;
        } else {
            PORTA.OUTCLR = BUZZER_bm;
        }
        sleep_enable();
        sei();
        sleep_cpu();
        sleep_disable();
    }
}
