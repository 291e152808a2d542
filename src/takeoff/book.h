/* The price book: what things are sold in and cost, and what a supplier's figures set in place of the
 * plot's defaults. It is optional; without one every quantity still comes out. */
#ifndef TAKEOFF_BOOK_H
#define TAKEOFF_BOOK_H

#include "plot/plot.h"

struct book {
	struct block allow; /* what is set holds where the plot sets nothing */
};

#endif
