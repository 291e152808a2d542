#include "support/changes.h"

#include "plot/edit/fence_lay.h"
#include "plot/edit/lay.h"
#include "plot/edit/legend.h"
#include "plot/edit/levels_move.h"
#include "plot/edit/resize.h"
#include "support/details.h"

static void act_on_ground(struct plot *plot, struct random *random)
{
	struct ground *ground = &plot->ground;
	int entry = random_between(random, -1, (int)plot->details.legend_count - 1);
	char letter = entry < 0 ? OPEN_GROUND : plot->details.legend[entry].letter;
	int x = random_below(random, ground->columns), y = random_below(random, ground->rows);
	struct rectangle r = rectangle_between(x, y, random_below(random, ground->columns),
		random_below(random, ground->rows));

	switch (random_below(random, 4)) {
	case 0:
		lay_flood(plot, x, y, letter);
		break;
	case 1:
		lay_frame(plot, r, random_between(random, 1, 3), letter);
		break;
	default:
		lay_rectangle(plot, r, letter);
		break;
	}
}

static void act_on_size(struct plot *plot, struct random *random)
{
	struct margins m = { random_between(random, -2, 2), random_between(random, -2, 2),
		random_between(random, -2, 2), random_between(random, -2, 2) };

	if (resize_fits(&plot->ground, &m))
		resize_plot(plot, &m);
}

static void act_on_details(struct plot *plot, struct random *random)
{
	struct details *details = &plot->details;
	size_t i = (size_t)random_below(random, (int)details->legend_count);
	struct block *block = random_below(random, 2) ? &details->head : &details->legend[i].block;
	enum attribute a = (enum attribute)random_between(random, (int)block_first(block->kind),
		(int)block_last(block->kind));
	char free_letter = legend_free_letter(details, details->legend[i].class);

	switch (random_below(random, 4)) {
	case 0:
		notes_add(&block->notes, text_at_random(random, 1, 20));
		break;
	case 1:
		legend_reletter(plot, details->legend[i].letter, free_letter);
		break;
	case 2:
		if (details->legend_count > 1)
			legend_remove(plot, details->legend[i].letter, OPEN_GROUND);
		break;
	default:
		block_set(block, a, value_at_random(random, a, &plot->ground));
		levels_cover(&details->levels, &plot->ground, plot_cell(plot));
		break;
	}
}

/* How a fence lies is drawn elsewhere; here another one comes, or one goes along the plan's top. */
static void act_on_fences(struct plot *plot, struct random *random)
{
	if (plot->details.fence_count == 0 || random_below(random, 3) == 0)
		fence_at_random(plot, random);
	else
		fence_lay(plot, &plot->details.fences[0],
			(struct leg){ { 0, 0 }, { plot->ground.columns, 0 } });
}

/* All that was around goes, and something else comes. */
static void act_on_surroundings(struct plot *plot, struct random *random)
{
	surroundings_fini(&plot->details.around);
	levels_fini(&plot->details.levels);
	around_at_random(plot, random);
}

/* The same of all that grows. */
static void act_on_plants(struct plot *plot, struct random *random)
{
	plants_fini(&plot->details.plants);
	plants_at_random(plot, random);
}

void change_at_random(struct plot *plot, struct random *random)
{
	int what = random_below(random, 13);

	if (what < 6)
		act_on_ground(plot, random);
	else if (what < 7)
		act_on_size(plot, random);
	else if (what < 10)
		act_on_details(plot, random);
	else if (what < 11)
		act_on_surroundings(plot, random);
	else if (what < 12)
		act_on_plants(plot, random);
	else
		act_on_fences(plot, random);
}
