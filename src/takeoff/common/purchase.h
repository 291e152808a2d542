/* How goods are bought: packs, what they cost and weigh. */
#ifndef TAKEOFF_COMMON_PURCHASE_H
#define TAKEOFF_COMMON_PURCHASE_H

#include "prices/book.h"

/* So many packs of one kind. */
struct bought {
	const struct pack *pack;
	double packs;  /* over 0; whole, of bulk in pack sizes, a whole number of steps */
	money cost;    /* 0 where the pack has no price */
	double weight; /* kg; 0: not known */
	double volume; /* m3 of bulk, else 0 */
};

/* What is bought at once, of one item or of several that are the same thing. */
struct purchase {
	const struct goods *goods; /* what the book has of it; NULL: nothing */
	const char *spec;  /* what to ask for besides; "": nothing */
	const struct bought *list; /* in the order of the book */
	int count;
	bool is_priced;    /* all have a price */
	bool is_own_price; /* that of the plot itself, not of the book's packs */
	money cost;
	double weight;     /* kg, of what has a known weight */
	bool is_weighed;   /* all have */
	int day;           /* on which it comes, as in takeoff/costs/days.h */
};

#endif
