#include "takeoff/advice/proposal.h"
#include "plot/edit/lay.h"
#include "plot/edit/legend.h"

#include <stdlib.h>

bool ground_is_free(const struct plot *plot, struct rectangle r)
{
	struct rectangle in = rectangle_within(r, &plot->ground);

	for (int y = in.top; y <= in.bottom; y++)
		for (int x = in.left; x <= in.right; x++) {
			enum plot_class class = plot_class_of(plot,
				ground_cell(&plot->ground, x, y));

			if (class == CLASS_BED || class == CLASS_FIXTURE)
				return false;
		}
	return true;
}

static bool set_courses(struct plot *plot, const struct proposal *proposal)
{
	struct entry *entry =
		&plot->details.legend[legend_index(&plot->details, proposal->letter)];

	block_set(&entry->block, BED_COURSES,
		(struct value){ .set = true, .as.number = proposal->courses });
	if (proposal->kind == PROPOSE_BLOCK)
		block_set(&entry->block, BED_BLOCK,
			(struct value){ .set = true, .as.size = proposal->block });
	return true;
}

/* Whether the mirror holds in all of the patch. */
static bool is_mirrored(const struct plot *plot, const struct rectangle *rows, size_t count)
{
	struct mirror mirror = mirror_of(plot);
	bool holds = true;

	for (size_t i = 0; i < count; i++)
		for (int x = rows[i].left; holds && x <= rows[i].right; x++)
			holds = !mirror_is_broken(&mirror, &plot->ground, x, rows[i].top);
	return holds;
}

/* The bed alone: an image of it may be but a part of another bed, and is not laid. */
static void reletter(struct plot *plot, struct place bed, char letter)
{
	const struct mirror off = { .kind = MIRROR_OFF };
	struct laid laid = { 0, false };
	size_t count;
	struct rectangle *rows = lay_patch(&plot->ground, bed, &count);

	for (size_t i = 0; i < count; i++)
		lay_piece(plot, &off, rows[i], letter, &laid);
	free(rows);
}

static bool join_beds(struct plot *plot, const struct proposal *proposal)
{
	size_t count;
	struct rectangle *rows = lay_patch(&plot->ground, proposal->at[0], &count);
	bool holds = is_mirrored(plot, rows, count);

	free(rows);
	for (int i = 0; holds && 2 * i < proposal->region_count; i++)
		reletter(plot, proposal->at[i], proposal->letter);
	return holds;
}

bool proposal_apply(struct plot *plot, const struct proposal *proposal)
{
	static bool (*const apply[PROPOSAL_KINDS])(struct plot *, const struct proposal *) = {
		[PROPOSE_COURSES] = set_courses, [PROPOSE_BLOCK] = set_courses,
		[PROPOSE_JOINED] = join_beds, [PROPOSE_FENCE] = move_fence_leg,
		[PROPOSE_SIZE] = resize_bed,
	};

	return apply[proposal->kind](plot, proposal);
}
