/* The part of a sheet that every block of a plot has: a field for each attribute of its kind,
 * straight from the attribute table, then its notes, then an empty one for one note more. */
#ifndef SCREEN_BLOCK_SHEET_H
#define SCREEN_BLOCK_SHEET_H

#include "plot/attribute.h"
#include "screen/sheet.h"

/* Notes that can be changed in a sheet; later ones stay as they are. */
enum { SHEET_NOTES_MOST = 100 };

/* How many fields that makes. */
int block_fields(const struct block *block);
/* Labels the fields from `first` on and types what the block says, in the sheet's units. */
void block_fields_set(struct sheet *sheet, int first, const struct block *block);
/* Reads the fields into a block that they were set from; what nobody touched stays as it is.
 * False, fault filled, the block as it was, where one is wrong. */
bool block_fields_read(const struct sheet *sheet, int first, struct block *block,
	struct fault *fault);

#endif
