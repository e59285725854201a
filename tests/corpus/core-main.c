/* A main of our own for the C files of the core: samples a channel on a button, times a pulse, talks to a sensor over the wires. */
#include "Arduino.h"
#include "utility/twi.h"
#include "pins_arduino.h"

static volatile uint8_t pressed;

static void on_button(void)
{
	pressed = 1;
}

void yield(void);

int main(void)
{
	uint8_t reading[2];

	init();
	pinMode(13, OUTPUT);
	pinMode(2, INPUT_PULLUP);
	pinMode(7, OUTPUT);
	pinMode(8, INPUT);
	attachInterrupt(0, on_button, 2);
	twi_init();

	for (;;) {
		if (pressed) {
			pressed = 0;
			digitalWrite(13, HIGH);
			analogWrite(9, analogRead(0) >> 2);
			if (pulseIn(8, HIGH, 20000UL) > 100UL)
				shiftOut(7, 13, MSBFIRST, 0x5a);
			reading[0] = 0;
			twi_writeTo(0x48, reading, 1, 1, 1);
			twi_readFrom(0x48, reading, 2, 1);
			delay(50);
			digitalWrite(13, LOW);
		}
	}
}
