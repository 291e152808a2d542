/* Services and things kept: what is there, how it is dug near them, and what new lines take.
 *
 * Of a line to lay:
 *
 *	length   of all its legs; where they lie over each other once
 *	trench   from the ground down to the line's top and `below` deeper, with upright sides;
 *	         volume = length x width x depth, dug and put back
 *	sleeves  sleeves.h; their good is ordered as long as they are in all
 *
 * A trench's earth goes back where it came from and is in no other volume. Common practice, no
 * published source. */
#ifndef TAKEOFF_SERVICES_SERVICE_LINES_H
#define TAKEOFF_SERVICES_SERVICE_LINES_H

#include "takeoff/common/items.h"
#include "takeoff/services/by_hand.h"
#include "takeoff/services/sleeves.h"

enum line_state { LINE_EXISTING, LINE_TO_LAY };
/* Of an owner: not told, or as the plot has it. */
enum line_owner { LINE_OWNER_UNTOLD, LINE_PUBLIC, LINE_PRIVATE };

struct service_line {
	const struct service *service; /* of the plot in force */
	const char *name;
	enum service_kind kind;
	enum line_state state;
	enum line_owner owner;
	bool has_depth;
	nm depth;                  /* to its top; 0 where it is not known */
	nm length;
	nm width, trench_depth;    /* of the trench of one to lay; else 0 */
	double trench;             /* m3 */
	const struct sleeve *sleeves;
	int sleeve_count;
	nm sleeve_length;          /* of them all */
	struct hand hand;          /* of an existing one; else all 0 */
};

/* A thing that is kept. */
struct kept {
	const struct obstacle *obstacle; /* of the plot */
	const char *name;
	nm radius;                 /* of a circle; 0: a rectangle */
	struct spot from, to;      /* around it: left and top, right and bottom */
	struct hand hand;
};

struct service_lines {
	const struct service_line *list; /* in the plot's order */
	int count;
	const struct kept *kept;   /* in the plot's order */
	int kept_count;
	int existing, to_lay;      /* how many of them */
	nm laid, sleeves;          /* length of all lines to lay; of all sleeves */
	double trenches;           /* m3 of all trenches */
};

/* Adds the snags
 *
 *	service-near  ground of a region or of none, the hole of a post or a plant or a trench is
 *	              dug nearer to an existing service than is allowed for
 *	keep-dug      the same within something that is kept
 *
 * each once for a region, a post, a trench, a kind of plant in a region, however many things it is
 * near. */
void service_lines_find(struct service_lines *out, const struct basis *basis,
	const struct work_ground *ground, const struct fences *fences);
/* Puts in all cells that are dug by hand, of a plot in force. */
void service_lines_near(const struct plot *plot, struct near_cells *cells);
/* Adds the sleeves. */
void service_lines_items(struct item_list *items, const struct service_lines *lines);

extern const struct word line_kind_words[SERVICE_KINDS], line_state_words[], line_owner_words[];
extern const struct figure_table service_line_table, kept_table;

#endif
