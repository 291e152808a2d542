#include "takeoff/work.h"
#include "takeoff/takeoff.h"
#include "takeoff/work_facts.h"

/* What it takes of the items. items: room for their indices. */
static void step_take(struct planned_step *step, const struct takeoff *takeoff, int *items)
{
	const struct item_list *list = &takeoff->items;

	step->items = items;
	for (size_t i = 0; i < list->count; i++) {
		const struct item *item = &list->list[i];

		if (item->order <= 0 || work_step_of_good(item->good) != step->step)
			continue;
		items[step->item_count++] = (int)i;
	}
}

/* A step's labour follows each other. */
static void step_labour(struct planned_step *step, const struct labours *labours)
{
	for (int i = 0; i < labours->count; i++) {
		const struct labour *labour = &labours->list[i];

		if (labour->step != step->step)
			continue;
		if (step->labour_count++ == 0)
			step->labour = labour;
		step->hours += labour->hours;
		step->has_hours = step->has_hours || labour->source != RATE_UNKNOWN;
	}
}

/* Steps without goods or labour of their own; all others come up with these. */
static bool comes_up(const struct planned_step *step, uint64_t facts)
{
	switch (step->step) {
	case WORK_SERVICES:
	case WORK_SET_OUT:
	case WORK_CLEAR_UP:
		return facts & FACT(CORE);
	case WORK_SLEEVES:
		return facts & (FACT(PATHS) | FACT(WALLS));
	case WORK_SET_ASIDE:
		return facts & (FACT(REUSED) | FACT(BACKFILL));
	default:
		return false;
	}
}

static void sum_up(struct work *work, const struct block *allow)
{
	struct work_sum *sum = &work->sum;

	sum->crew = block_number(allow, ALLOW_CREW);
	sum->day = (double)block_number(allow, ALLOW_DAY) / (double)MILLION;
	for (int i = 0; i < work->labours.count; i++) {
		const struct labour *labour = &work->labours.list[i];

		sum->hours += labour->hours;
		sum->unrated += labour->source == RATE_UNKNOWN;
	}
	sum->days = sum->hours / (double)sum->crew / sum->day;
}

void work_plan(struct work *out, const struct takeoff *takeoff, const struct plot *plot,
	struct arena *arena)
{
	struct planned_step *steps = arena_new(arena, WORK_STEPS, sizeof *steps);
	int *items = arena_new(arena, takeoff->items.count, sizeof *items);

	*out = (struct work){ .list = steps };
	labour_compute(&out->labours, takeoff, plot, arena);
	out->facts = work_facts(takeoff, &out->labours);
	for (int i = 0; i < WORK_STEPS; i++) {
		struct planned_step *step = &steps[i];

		*step = (struct planned_step){ .step = (enum work_step)i,
			.barrow = barrow_run_of(takeoff, (enum work_step)i) };
		step_take(step, takeoff, items);
		items += step->item_count;
		step_labour(step, &out->labours);
		if (i != WORK_SERVICES && (step->item_count > 0 || step->labour_count > 0))
			out->facts |= FACT(CORE);
	}
	for (int i = 0; i < WORK_STEPS; i++)
		if (steps[i].item_count > 0 || steps[i].labour_count > 0 ||
			comes_up(&steps[i], out->facts))
			steps[out->count++] = steps[i];
	sum_up(out, takeoff->allow);
}

static const struct figure figures[] = {
	{ "hours", NULL, "Hours of one person", FIELD(NUMBER, work_sum, hours) },
	{ "unrated", NULL, NULL, FIELD(COUNT, work_sum, unrated) },
	{ "crew", NULL, "Crew", FIELD(COUNT, work_sum, crew) },
	{ "day_hours", NULL, "Hours of work a day", FIELD(NUMBER, work_sum, day) },
	{ "days", NULL, "Days", FIELD(NUMBER, work_sum, days) },
};
const struct figure_table work_sum_table = FIGURE_TABLE(work_sum, figures);
