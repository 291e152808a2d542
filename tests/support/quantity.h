/* Reads quantities as a takeoff shows them to people. */
#ifndef SUPPORT_QUANTITY_H
#define SUPPORT_QUANTITY_H

/* The number at *at and the unit after it, if it is an area, a volume or a weight; *at is moved
 * behind them. In SI, with what half the last digit is: "1,200 lb", "26 1/2 cu yd", "-" for 0. */
double quantity_read(const char **at, double *half);
/* Fails unless that is what is shown there, as exactly as it is shown. */
void quantity_is(const char **at, double expected);

#endif
