/* The tables of acts, one in each act_*.c, in the order in which lists show them. */
#ifndef EDITOR_ACTS_ACT_GROUPS_H
#define EDITOR_ACTS_ACT_GROUPS_H

#include "editor/acts/acts.h"

struct act_group {
	const char *heading; /* in lists; tables that stand side by side may share it */
	const struct act *acts;
	int count;
};

/* Of an array of acts; of a single key. */
#define ACT_GROUP(heading_, acts_) \
	{ .heading = (heading_), .acts = (acts_), .count = (int)(sizeof (acts_) / sizeof *(acts_)) }
#define ONE_KEY(key_) { { (key_), (key_) } }

extern const struct act_group acts_of_moving, acts_of_view, acts_of_laying, acts_of_peg,
	acts_of_runs, acts_of_round, acts_of_end, acts_of_mark, acts_of_letters, acts_of_fence,
	acts_of_services, acts_of_levels, acts_of_around, acts_of_plants,
	acts_of_mirror, acts_of_axis, acts_of_page, acts_of_snags, acts_of_cards, acts_of_size,
	acts_of_strips, acts_of_names, acts_of_file, acts_of_drawing, acts_of_price,
	acts_of_save_as, acts_of_program, acts_of_list;

enum { ACT_GROUPS = 28 };
extern const struct act_group *const act_groups[ACT_GROUPS];

#endif
