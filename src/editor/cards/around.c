#include "editor/cards/around.h"
#include "base/memory.h"
#include "editor/cards/finish_card.h"
#include "editor/cards/levels_card.h"
#include "editor/cards/obstacle_card.h"
#include "editor/cards/service_card.h"
#include "editor/cards/tie_card.h"

static int count_of(const struct details *details, enum around_kind kind)
{
	const struct surroundings *around = &details->around;

	switch (kind) {
	case AROUND_SERVICE:
		return (int)around->services.count;
	case AROUND_LEVELS:
		return details->levels.step > 0;
	case AROUND_FINISH:
		return details->finish.has_level || details->finish.has_fall;
	case AROUND_HOUSE:
		return (int)around->houses.count;
	case AROUND_SHADE:
		return (int)around->shades.count;
	case AROUND_TIE:
		return (int)around->ties.count;
	case AROUND_KEEP:
		return (int)around->kept.count;
	case AROUND_DROP:
		return around->has_drop;
	case AROUND_TAP:
		return around->has_tap;
	}
	return 0;
}

int around_count(const struct plot *plot)
{
	int count = 0;

	for (int kind = 0; kind < AROUND_KINDS; kind++)
		count += count_of(&plot->details, (enum around_kind)kind);
	return count;
}

struct around around_get(const struct plot *plot, int index)
{
	int kind = 0, count = count_of(&plot->details, AROUND_SERVICE);

	while (index >= count) {
		index -= count;
		count = count_of(&plot->details, (enum around_kind)++kind);
	}
	return (struct around){ (enum around_kind)kind, index };
}

const char *around_name(const struct report *report, struct around around)
{
	const struct details *details = &report->plot->details;
	const struct surroundings *all = &details->around;

	switch (around.kind) {
	case AROUND_SERVICE:
		return all->services.items[around.which].name;
	case AROUND_LEVELS:
		return say(report, "Levels, %s apart",
			exact_length(report, details->levels.step));
	case AROUND_FINISH:
		return "The finished ground";
	case AROUND_HOUSE:
		return all->houses.items[around.which].name;
	case AROUND_SHADE:
		return all->shades.items[around.which].name;
	case AROUND_TIE:
		return say(report, "%s, %s", all->ties.items[around.which].name,
			plain_length(report, all->ties.items[around.which].length));
	case AROUND_KEEP:
		return all->kept.items[around.which].name;
	case AROUND_DROP:
		return "Where deliveries are put down";
	case AROUND_TAP:
		return "Where water comes from";
	}
	return "";
}

const char *around_word(struct around around)
{
	static const char *const words[AROUND_KINDS] = { [AROUND_SERVICE] = "service",
		[AROUND_LEVELS] = "levels", [AROUND_FINISH] = "finish", [AROUND_HOUSE] = "house",
		[AROUND_SHADE] = "shade", [AROUND_TIE] = "tie", [AROUND_KEEP] = "keep",
		[AROUND_DROP] = "drop", [AROUND_TAP] = "tap" };

	return words[around.kind];
}

bool around_change(struct editor *editor, struct around around)
{
	switch (around.kind) {
	case AROUND_SERVICE:
		return service_card_change(editor, around.which);
	case AROUND_LEVELS:
		return levels_card_step(editor);
	case AROUND_FINISH:
		return finish_card_fill(editor);
	case AROUND_HOUSE:
		return house_card_change(editor, around.which);
	case AROUND_SHADE:
		return shade_card_change(editor, around.which);
	case AROUND_TIE:
		return tie_card_change(editor, around.which);
	case AROUND_KEEP:
		return keep_card_change(editor, around.which);
	case AROUND_DROP:
		return drop_card_change(editor);
	case AROUND_TAP:
		return tap_card_change(editor);
	}
	return false;
}

/* ---- Removing -------------------------------------------------------------------------------- */

enum { ALL_OF_IT }; /* of a service; from 1 on: one of its lines */

/* Of a service with several lines, each told by where it begins; ANSWER_NONE where that is left. */
static int how_much_ask(struct editor *editor, int which)
{
	const struct routes *routes = &editor->plot->details.around.services.items[which].routes;
	struct report report = editor_report(editor, &editor->words);
	const char **answers = arena_new(&editor->words, routes->count + 1, sizeof *answers);
	const struct question question = { .text = "Remove how much of it?",
		.answers = answers, .count = (int)routes->count + 1 };

	answers[ALL_OF_IT] = "All of it";
	for (size_t i = 0; i < routes->count; i++)
		answers[i + 1] = say(&report, "The line from %s",
			plain_place(&report, routes->items[i].points[0]));
	return routes->count > 1 ? editor->asker->choose(editor->asker, &question) : ALL_OF_IT;
}

static void service_remove(struct services *services, size_t which, int how_much)
{
	if (how_much == ALL_OF_IT)
		services_remove(services, which);
	else
		routes_remove(&services->items[which].routes, (size_t)how_much - 1);
}

bool around_remove(struct editor *editor, struct around around)
{
	int how_much = around.kind == AROUND_SERVICE ? how_much_ask(editor, around.which) :
		ALL_OF_IT;
	size_t which = (size_t)around.which;
	struct surroundings *all;
	struct details *details;

	if (how_much == ANSWER_NONE)
		return false;
	details = &editor_edit(editor)->details;
	all = &details->around;
	switch (around.kind) {
	case AROUND_SERVICE:
		service_remove(&all->services, which, how_much);
		break;
	case AROUND_LEVELS:
		levels_fini(&details->levels);
		break;
	case AROUND_FINISH:
		details->finish = (struct finish){ .has_level = false };
		break;
	case AROUND_HOUSE:
		obstacles_remove(&all->houses, which);
		break;
	case AROUND_SHADE:
		obstacles_remove(&all->shades, which);
		break;
	case AROUND_TIE:
		ties_remove(&all->ties, which);
		break;
	case AROUND_KEEP:
		obstacles_remove(&all->kept, which);
		break;
	case AROUND_DROP:
		all->has_drop = false;
		break;
	case AROUND_TAP:
		all->has_tap = false;
		break;
	}
	return true;
}
