#include "usb.h"

#include <msp430.h>

static volatile unsigned int times_plugged;

void usb_init(void)
{
    USBKEYPID = USBKEY;
    USBPLLDIVB = 0;
    USBPLLCTL = UPLLEN | UCLKSEL__XT2CLK; // finding: oscillator-kept-on USBPLL proven warning
    USBPWRCTL |= VBONIE;
    USBKEYPID = 0;
}

#pragma vector = USB_UBM_VECTOR
__interrupt void on_plug(void)
{
    USBKEYPID = USBKEY;
    USBPWRCTL &= ~VBONIFG;
    USBKEYPID = 0;
    times_plugged++;
}
