#include "editor/lattice.h"
#include "base/number.h"

/* Where cells are taken together again from piece 1 on: after a cell that the axis divides, piece 0
 * being that cell alone. */
static int second(const struct lattice *lattice)
{
	return lattice->axis / 2 + (lattice->axis % 2 ? 1 : lattice->size);
}

int lattice_piece(const struct lattice *lattice, int cell)
{
	int zero = lattice->axis / 2;

	if (cell >= second(lattice))
		return 1 + (cell - second(lattice)) / lattice->size;
	return cell >= zero ? 0 : -(int)quotient_up(zero - cell, lattice->size);
}

int lattice_first(const struct lattice *lattice, int piece)
{
	return piece > 0 ? second(lattice) + (piece - 1) * lattice->size :
		lattice->axis / 2 + piece * lattice->size;
}
