#include "calendar.h"

#include <stdint.h>

#include "board.h"

#define MINUTES_TO_SAMPLE 10

static volatile uint8_t minutes;

void calendar_init(void)
{
    RTCCTL01 = RTCBCD | RTCHOLD | RTCTEV__MIN | RTCTEVIE;
    RTCTIM0 = 0;
    RTCTIM1 = 0;
    RTCCTL01 &= ~RTCHOLD;
}

void calendar_wait(void)
{
    __disable_interrupt();
    while (minutes < MINUTES_TO_SAMPLE) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    minutes = 0;
    __enable_interrupt();
}

__attribute__((interrupt(RTC_VECTOR))) void on_minute(void)
{
    if (RTCIV == RTCIV_RTCTEVIFG && ++minutes >= MINUTES_TO_SAMPLE)
        __bic_SR_register_on_exit(LPM3_bits);
}
