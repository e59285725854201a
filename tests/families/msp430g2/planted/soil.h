#ifndef SOIL_H
#define SOIL_H

#define SOIL BIT7

void soil_init(void);
int soil_is_dry(void);

#endif
