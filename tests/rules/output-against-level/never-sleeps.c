// device: attiny13a
// board: PB4: { driven: low }
#include <avr/io.h>

int main(void)
{
    PORTB = _BV(PB4);
    DDRB = _BV(PB4); // finding: output-against-level PB4 proven error
    for (;;) {
    }
}
