#include "bus.h"

#include <avr/io.h>
#include <avr/power.h>
#include <util/delay.h>

void bus_init(void)
{
    CLKPR = 0; // finding: locked-write CLKPR proven
    power_usb_enable();
    UHWCON = _BV(UVREGE);
    USBCON = _BV(USBE); // finding: peripheral-on-in-sleep USB proven
}

void bus_click(void)
{
    UDCON &= (uint8_t)~_BV(DETACH);
    _delay_ms(30); // finding: busy-wait-delay bus_click() proven
    UDCON |= _BV(DETACH);
}
