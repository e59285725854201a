#include "calendar.h"

#include "board.h"

static volatile bool changed;

/* The event is each change of the minute. */
void calendar_start(void)
{
    RTCCTL0_H = RTCKEY_H;
    RTCCTL13 = RTCMODE | RTCBCD | RTCHOLD | RTCTEV_0;
    RTCTIM0 = 0;
    RTCTIM1 = 0x0012;
    RTCCTL0_L = RTCTEVIE;
    RTCCTL13 &= ~RTCHOLD;
    RTCCTL0_H = 0;
}

bool calendar_has_changed(void)
{
    bool was = changed;

    changed = false;
    return was;
}

uint8_t calendar_hour(void)
{
    return (uint8_t)RTCTIM1;
}

uint8_t calendar_minute(void)
{
    return (uint8_t)(RTCTIM0 >> 8);
}

__attribute__((interrupt(RTC_VECTOR))) void on_event(void)
{
    if (RTCIV != RTCIV__RTCTEVIFG)
        return;
    changed = true;
    __bic_SR_register_on_exit(LPM3_bits);
}
