/* The sizes that blocks of one kind are sawn to, a letter for each: on laying sheets a piece is
 * filled with it, in the cut list it names the row. */
#ifndef REPORT_TEXT_SAWN_H
#define REPORT_TEXT_SAWN_H

#include "takeoff/walls/cutting.h"

struct sawn {
	const struct cutting *cutting;
	struct batch *sizes; /* places, longest first, each once, with the pieces of it */
	int count;
};

struct sawn sawn_make(const struct cutting *cutting);
void sawn_fini(struct sawn *sawn);

/* a to z, A to Z for the longest 52 sizes, SAWN_UNNAMED for those that follow. */
enum { SAWN_LETTERS = 52, SAWN_UNNAMED = '*' };
char sawn_letter(int size);
/* The size of a sawn piece, an index into `sizes`; their count where it is none, as it may be after
 * a stop. */
int sawn_size(const struct sawn *sawn, nm place);
/* True where this is what the wall's blocks, or its caps, are sawn to. */
bool sawn_is_of(const struct sawn *sawn, const struct wall *wall, enum block_use use);

/* What the blocks of the plot are sawn to: one for each row of the takeoff's cuttings. */
struct all_sawn {
	struct sawn *list;
	int count;
};

/* To be freed with all_sawn_fini. */
struct all_sawn all_sawn_make(const struct cuttings *cuttings);
void all_sawn_fini(struct all_sawn *all);
/* What the wall's blocks or caps are sawn to; it must have such. */
const struct sawn *all_sawn_of(const struct all_sawn *all, const struct wall *wall,
	enum block_use use);

#endif
