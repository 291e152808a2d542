#include "base/memory.h"
#include "plot/edit/fence_lay.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/gate_offer.h"
#include "editor/acts/shared.h"
#include "editor/cards/fence_card.h"
#include "prices/in_force.h"

/* ---- Along what ----------------------------------------------------------------------------- */

enum place_along { ALONG_ALL, ALONG_TOP, ALONG_BOTTOM, ALONG_LEFT, ALONG_RIGHT };
enum { PLACES = ALONG_RIGHT + 1, SIDES_MOST = 4, NEW_FENCE = -1 };

/* Some of the sides of a rectangle of cells. */
struct along {
	struct leg legs[SIDES_MOST];
	int count;
};

struct rectangle act_cells_meant(const struct editor *editor)
{
	struct place at = editor->cursor;

	if (editor->is_marked)
		return editor->marked;
	return editor->is_pegged ? editor_pegged(editor) :
		(struct rectangle){ at.x, at.y, at.x, at.y };
}

static struct along along_of(struct rectangle r, enum place_along place)
{
	const struct leg sides[SIDES_MOST] = {
		{ { r.left, r.top }, { r.right + 1, r.top } },
		{ { r.left, r.bottom + 1 }, { r.right + 1, r.bottom + 1 } },
		{ { r.left, r.top }, { r.left, r.bottom + 1 } },
		{ { r.right + 1, r.top }, { r.right + 1, r.bottom + 1 } },
	};

	if (place != ALONG_ALL)
		return (struct along){ { sides[place - ALONG_TOP] }, 1 };
	return (struct along){ { sides[0], sides[1], sides[2], sides[3] }, SIDES_MOST };
}

/* ---- What can be done ----------------------------------------------------------------------- */

/* One thing that can be done to a fence along a leg. */
struct fence_work {
	const char *question;
	bool is_new_too;     /* also with a fence that is not there yet */
	bool is_all_too;     /* also along all sides at once */
	/* Whether a leg of the fence is one that it can be done to. */
	bool (*fits)(const struct fence *fence, struct leg leg);
	struct laid (*act)(struct plot *plot, struct fence *fence, struct leg leg);
	const char *nowhere; /* where it can be done along no side */
	const char *done;    /* to a length of fence; NULL: it is done to gates */
	bool is_setting;     /* gates */
	const char *nothing; /* where it changed nothing */
};

static bool any_fits(const struct fence *fence, struct leg leg)
{
	(void)fence, (void)leg;
	return true;
}

static struct legs legs_of(const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;

	fence_legs(fence, &legs);
	legs_join(&legs);
	return legs;
}

static bool covered_fits(const struct fence *fence, struct leg leg)
{
	struct legs legs = legs_of(fence);
	bool fits = legs_cover(&legs, leg);

	legs_fini(&legs);
	return fits;
}

static bool fenced_fits(const struct fence *fence, struct leg leg)
{
	struct legs legs = legs_of(fence);
	bool fits = false;

	for (size_t i = 0; i < legs.count; i++)
		fits = fits || leg_overlap(legs.items[i], leg);
	legs_fini(&legs);
	return fits;
}

static bool gated_fits(const struct fence *fence, struct leg leg)
{
	bool fits = false;

	for (size_t i = 0; i < fence->gates.count; i++)
		fits = fits || leg_overlap(fence->gates.items[i], leg);
	return fits;
}

/* "Pickets: 14 ft laid; Backspace takes it back." */
static void say_done(struct editor *editor, const struct fence_work *work,
	const struct fence *fence, int64_t changed, const struct along *along)
{
	struct report report = editor_report(editor, &editor->words);
	const struct legs *gates = &fence->gates;
	size_t set = 0;

	/* Images that overlap the gate make it longer. */
	while (work->is_setting && set < gates->count &&
	       !leg_covers(gates->items[set], along->legs[0]))
		set++;
	if (work->done)
		editor_say(editor, "%s: %s %s; %s takes it back.", fence->name,
			plain_sides(&report, changed), work->done, acts_key(ACT_TAKE_BACK));
	else if (work->is_setting)
		editor_say(editor, "%s: %s%s from post to post.", fence->name, changed == 1 ?
			"a gate set, " : say(&report, "%lld gates set, each ", (long long)changed),
			set == gates->count ? "" :
			plain_sides(&report, leg_length(gates->items[set])));
	else
		editor_say(editor, "%s: %lld %s taken out; the fence goes on there.", fence->name,
			(long long)changed, changed == 1 ? "gate" : "gates");
}

enum { LAYING, GATING, TAKING_OUT, UNGATING };

static const struct fence_work works[] = {
	[LAYING] = { .question = "Lay a fence along which side?", .is_new_too = true,
		.is_all_too = true, .fits = any_fits, .act = fence_lay, .nowhere = "",
		.done = "laid", .nothing = "It goes along there already." },
	[GATING] = { .question = "Set a gate in which side?", .fits = covered_fits,
		.act = fence_set_gate, .nowhere = "No side here is fenced from end to end: "
			"lay a fence first, then set the gate in it.",
		.is_setting = true, .nothing = "There is such a gate already." },
	[TAKING_OUT] = { .question = "Take out the fence along which side?", .is_all_too = true,
		.fits = fenced_fits, .act = fence_take_out, .nowhere = "No fence goes along here.",
		.done = "taken out", .nothing = "No fence goes along there." },
	[UNGATING] = { .question = "Take out the gate of which side?", .is_all_too = true,
		.fits = gated_fits, .act = fence_take_out_gate, .nowhere = "There is no gate here.",
		.nothing = "There is no gate there." },
};

/* ---- Which side, which fence ---------------------------------------------------------------- */

static bool fits_some(const struct fence_work *work, const struct fence *fence,
	const struct along *along)
{
	for (int i = 0; i < along->count; i++)
		if (work->fits(fence, along->legs[i]))
			return true;
	return false;
}

/* Whether it can be done along there at all. */
static bool is_possible(const struct editor *editor, const struct fence_work *work,
	enum place_along place, const struct along *along)
{
	if (place == ALONG_ALL && !work->is_all_too)
		return false;
	if (work->is_new_too)
		return true;
	for (size_t i = 0; i < editor->plot->details.fence_count; i++)
		if (fits_some(work, &editor->plot->details.fences[i], along))
			return true;
	return false;
}

/* The gate to offer at the side of a cell; where something is pegged or marked, all of its side. */
static struct leg gate_meant(struct editor *editor, struct leg side)
{
	struct plot plot;

	if (editor->is_marked || editor->is_pegged)
		return side;
	plot = plot_in_force(&editor->words, editor->plot, editor->has_book ? &editor->book : NULL);
	for (size_t i = 0; i < plot.details.fence_count; i++)
		if (covered_fits(&plot.details.fences[i], side))
			return gate_offer(&plot, &plot.details.fences[i], side);
	return side;
}

/* Asks along which side; where only one will do there is no question. False, having said why, where
 * none does; or where the question was left. */
static bool along_ask(struct editor *editor, const struct fence_work *work, struct along *chosen)
{
	static const char *const names[PLACES] = { "All round", "Top", "Bottom", "Left", "Right" };
	const char *answers[PLACES], *notes[PLACES];
	struct question question = { .text = work->question, .answers = answers, .notes = notes };
	struct along along[PLACES];
	struct report report = editor_report(editor, &editor->words);
	int answer = 0, singles = 0;

	for (enum place_along place = ALONG_ALL; place <= ALONG_RIGHT; place++) {
		struct along here = along_of(act_cells_meant(editor), place);
		int sides = 0;

		if (!is_possible(editor, work, place, &here))
			continue;
		if (work->is_setting)
			here.legs[0] = gate_meant(editor, here.legs[0]);
		answers[question.count] = names[place];
		for (int i = 0; i < here.count; i++)
			sides += leg_length(here.legs[i]);
		notes[question.count] = plain_sides(&report, sides);
		along[question.count++] = here;
		singles += place != ALONG_ALL;
	}
	if (question.count == 0)
		editor_say(editor, "%s", work->nowhere);
	if (singles > 1)
		answer = editor->asker->choose(editor->asker, &question);
	if (question.count == 0 || answer == ANSWER_NONE)
		return false;
	*chosen = along[singles > 1 ? answer : question.count - 1];
	return true;
}

/* Asks which of the fences that fit; *fence is its index, NEW_FENCE where it shall be a new one.
 * False where the question was left. */
static bool fence_ask(struct editor *editor, const struct fence_work *work,
	const struct along *along, int *fence)
{
	const struct details *details = &editor->plot->details;
	struct arena arena = ARENA_EMPTY;
	const char **answers = arena_new(&arena, details->fence_count + 1, sizeof *answers);
	int *fences = arena_new(&arena, details->fence_count + 1, sizeof *fences);
	struct question question = { .text = "Which fence?", .answers = answers };
	int answer = 0;

	for (size_t i = 0; i < details->fence_count; i++) {
		if (!fits_some(work, &details->fences[i], along))
			continue;
		if ((int)i == editor->fence)
			question.first = question.count;
		fences[question.count] = (int)i;
		answers[question.count++] = details->fences[i].name;
	}
	fences[question.count] = NEW_FENCE;
	if (question.count > 1) {
		answers[question.count] = "A new fence";
		question.count += work->is_new_too;
		answer = editor->asker->choose(editor->asker, &question);
	}
	*fence = answer == ANSWER_NONE ? NEW_FENCE : fences[answer];
	if (*fence != NEW_FENCE)
		editor->fence = *fence;
	arena_clear(&arena);
	return answer != ANSWER_NONE;
}

/* ---- Doing it ------------------------------------------------------------------------------- */

static void along_do(struct editor *editor, const struct fence_work *work,
	const struct along *along)
{
	struct plot *plot;
	struct fence *fence;
	struct laid laid = { 0, false };
	int which;

	if (!fence_ask(editor, work, along, &which))
		return;
	/* The first fence is added as it is, a further one with its card. */
	if (which == NEW_FENCE && editor->plot->details.fence_count == 0)
		fence_card_begin(editor);
	else if (which == NEW_FENCE && !fence_card_add(editor))
		return;
	if (which == NEW_FENCE)
		which = (int)editor->plot->details.fence_count - 1;
	plot = editor_edit(editor);
	fence = &plot->details.fences[which];
	for (int i = 0; i < along->count; i++) {
		struct laid part = work->act(plot, fence, along->legs[i]);

		laid.changed += part.changed;
		laid.outside = laid.outside || part.outside;
	}
	editor->is_pegged = false;
	if (laid.changed)
		say_done(editor, work, fence, laid.changed, along);
	act_lay_end(editor, laid, work->nothing);
}

static void act_fence_work(struct editor *editor, int work)
{
	struct along along;

	if (along_ask(editor, &works[work], &along))
		along_do(editor, &works[work], &along);
}

static void act_fence_plan(struct editor *editor)
{
	const struct ground *ground = &editor->plot->ground;
	const struct rectangle all = { 0, 0, ground->columns - 1, ground->rows - 1 };
	struct along along = along_of(all, ALONG_ALL);

	along_do(editor, &works[LAYING], &along);
}

static void act_fence(struct editor *editor)
{
	static const struct choice choices[] = {
		{ .words = "Lay a fence", .act = ACT_FENCE_LAY },
		{ .words = "Set a gate", .act = ACT_GATE_SET },
		{ .words = "Take out the fence", .act = ACT_FENCE_OUT },
		{ .words = "Take out the gate", .act = ACT_GATE_OUT },
		{ .words = "Fence the whole plan", .act = ACT_FENCE_PLAN },
	};
	struct rectangle r = act_cells_meant(editor);
	struct report report = editor_report(editor, &editor->words);

	choice_ask(editor, say(&report, "Along %s, %s:", editor->is_marked ? "what is marked" :
		editor->is_pegged ? "the rectangle" : "this cell",
		plain_cells(&report, r.right - r.left + 1, r.bottom - r.top + 1)),
		choices, sizeof choices / sizeof *choices);
}

static const struct act acts[] = {
	{ .id = ACT_FENCE, .keys = ONE_KEY(':'), .key_name = ":", .name = "Fence",
		.wish = "fence the sides of cells",
		.words = "gate pickets posts boundary", .writes = true, .run = act_fence },
	{ .id = ACT_FENCE_LAY, .key_name = ":", .name = "Lay a fence",
		.wish = "lay a fence along a side",
		.words = "pickets posts panels", .writes = true, .run_with = act_fence_work,
		.with = LAYING },
	{ .id = ACT_GATE_SET, .key_name = ":", .name = "Set a gate",
		.wish = "set a gate in a fence",
		.words = "door entrance", .writes = true, .run_with = act_fence_work,
		.with = GATING },
	{ .id = ACT_FENCE_OUT, .key_name = ":", .name = "Take out the fence",
		.wish = "take out a fence along a side",
		.words = "remove delete erase", .writes = true, .run_with = act_fence_work,
		.with = TAKING_OUT },
	{ .id = ACT_GATE_OUT, .key_name = ":", .name = "Take out the gate",
		.wish = "take a gate out again",
		.words = "remove delete erase", .writes = true, .run_with = act_fence_work,
		.with = UNGATING },
	{ .id = ACT_FENCE_PLAN, .key_name = ":", .name = "Fence the whole plan",
		.wish = "fence all round the plan",
		.words = "boundary surround", .writes = true, .run = act_fence_plan },
};
const struct act_group acts_of_fence = ACT_GROUP("Fence", acts);
