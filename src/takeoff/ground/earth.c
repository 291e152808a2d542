#include "takeoff/ground/earth.h"
#include "base/measure.h"
#include "base/number.h"

#include <math.h>

double earth_sum(const struct earth *earth)
{
	return earth->sod + earth->topsoil + earth->subsoil;
}

struct earth earth_below(const struct block *allow, double area, nm depth)
{
	nm sod = nm_least(depth, block_length(allow, ALLOW_SOD));
	nm topsoil = nm_least(depth - sod, block_length(allow, ALLOW_TOPSOIL));

	return (struct earth){ volume_of(area, sod), volume_of(area, topsoil),
		volume_of(area, depth - sod - topsoil) };
}

void earth_add(struct earth *to, const struct earth *more)
{
	to->sod += more->sod;
	to->topsoil += more->topsoil;
	to->subsoil += more->subsoil;
}

struct earth earth_loosened(const struct block *allow, const struct earth *bank)
{
	static const enum attribute subsoils[] = {
		[SUBSOIL_LOAM] = ALLOW_SWELL_LOAM, [SUBSOIL_CLAY] = ALLOW_SWELL_CLAY,
		[SUBSOIL_SAND] = ALLOW_SWELL_SAND,
	};
	double topsoil = 1 + block_share(allow, ALLOW_SWELL_TOPSOIL);

	return (struct earth){ bank->sod * topsoil, bank->topsoil * topsoil,
		bank->subsoil *
			(1 + block_share(allow, subsoils[block_number(allow, ALLOW_SUBSOIL)])) };
}

struct earth earth_put_back(const struct block *allow, const struct earth *bank, double in_place)
{
	double wanted = in_place * (double)MILLION / (double)block_number(allow, ALLOW_SHRINK);
	double subsoil = fmin(bank->subsoil, wanted);

	return (struct earth){ 0, fmin(bank->topsoil, wanted - subsoil), subsoil };
}
