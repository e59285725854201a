// device: atxmega32a4u
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

int main(void)
{
    PORTD.DIRSET = 1;
    while (1) { // finding: superloop-without-sleep main() proven
        PORTD.OUTTGL = 1;
    }
}
