#include "editor/acts/advice.h"
#include "editor/ask/seek.h"

#include <stddef.h>

static const struct {
	const char *words, *advice; /* words: between blanks */
} rows[] = {
	{ "open load another", "Leave, then name the other file: parterre FILE" },
	{ "new begin", "For a new plot leave, then name its file: parterre FILE" },
	{ "curve oval arc diagonal slant",
		"Ground is made of square cells: Lay a round disc and Round corners go in steps." },
	{ "colour color colours colors theme dark bright",
		"Each kind of ground has its colour; NO_COLOR=1 parterre FILE shows none." },
	{ "print printer",
		"Write the takeoff to a file and print that; lp FILE does on many machines." },
	{ "spreadsheet csv json",
		"Write the takeoff to a file: NAME.csv for spreadsheets, NAME.json for programs." },
	{ "grass", "Grass is lawn: l is turf in a new plot, and its card knows seed too." },
	{ "pond fountain stairs steps seat bench shed",
		"A fixture: add one to the legend by the cards, with a name of your own." },
};

const char *advice_for(const char *typed)
{
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		if (seek_has_word(rows[i].words, typed))
			return rows[i].advice;
	return NULL;
}
