/* Earth by kind. From the top down the ground is sod, then topsoil, each as deep as the plot says,
 * then subsoil. */
#ifndef TAKEOFF_GROUND_EARTH_H
#define TAKEOFF_GROUND_EARTH_H

#include "plot/block.h"

/* m3, by kind. */
struct earth {
	double sod, topsoil, subsoil;
};

double earth_sum(const struct earth *earth);
/* What is below so many m2 of existing ground, down to a depth of 0 or more. allow: the values in
 * force. */
struct earth earth_below(const struct block *allow, double area, nm depth);
void earth_add(struct earth *to, const struct earth *more);
/* Loose: bank x (1 + swell), by kind; sod swells as topsoil does. */
struct earth earth_loosened(const struct block *allow, const struct earth *bank);
/* What so much in place, tamped, takes of the bank: its volume / shrink, of subsoil first, then of
 * topsoil, as far as there is any. */
struct earth earth_put_back(const struct block *allow, const struct earth *bank, double in_place);

#endif
