void light_start(void);
