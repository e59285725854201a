#ifndef USB_H
#define USB_H

void usb_init(void);

#endif
