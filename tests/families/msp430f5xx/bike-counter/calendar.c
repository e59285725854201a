#include "calendar.h"

#include <stdbool.h>

#include "board.h"

static volatile bool hour_is_full;
static uint16_t hours;

void calendar_init(void)
{
    RTCCTL01 = RTCMODE | RTCHOLD | RTCTEV__HOUR | RTCTEVIE;
    RTCCTL01 &= ~RTCHOLD;
}

void calendar_sleep_until_hour(void)
{
    __disable_interrupt();
    while (!hour_is_full) {
        __bis_SR_register(LPM3_bits | GIE);
        __disable_interrupt();
    }
    hour_is_full = false;
    __enable_interrupt();
    hours++;
}

uint16_t calendar_hour(void)
{
    return hours;
}

#pragma vector = RTC_VECTOR
__interrupt void on_calendar(void)
{
    if (RTCIV == RTCIV_RTCTEVIFG) {
        hour_is_full = true;
        __bic_SR_register_on_exit(LPM3_bits);
    }
}
