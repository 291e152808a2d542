#include "base/measure.h"

#include <math.h>

static const double HAIR = 1e-9;

double metres(nm length)
{
	return (double)length / (double)NM_PER_M;
}

double area_of(nm length, nm width)
{
	return metres(length) * metres(width);
}

double volume_of(double area, nm depth)
{
	return area * (double)depth / (double)NM_PER_M;
}

double whole(double amount)
{
	return ceil(amount - HAIR);
}
