#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/card_ask.h"
#include "editor/light.h"

/* ---- Hours ----------------------------------------------------------------------------------- */

static bool has_site(struct editor *editor)
{
	bool has = block_value(&editor->plot->details.head, HEAD_SITE)->set;

	if (!has)
		editor_say(editor, "No latitude is told. %s has the card of the plot itself, with "
			"a field for it.", acts_key(ACT_CARDS));
	return has;
}

static void act_show_sun(struct editor *editor)
{
	if (editor->layer == LAYER_SUN) {
		editor->layer = LAYER_NONE;
		editor_say(editor, "The plan shows no hours of sun now.");
	} else if (has_site(editor)) {
		editor->layer = LAYER_SUN;
		editor_say(editor, block_number(&editor->plot->details.head, HEAD_SITE) < 0 ?
			"The mean of days from 21 September to 21 March." :
			"The mean of days from 21 March to 21 September.");
	}
}

static const char *is_shown(const struct editor *editor)
{
	return editor->layer == LAYER_SUN ? "on" : "off";
}

/* ---- The shadows of a moment ----------------------------------------------------------------- */

enum { QUARTERS_A_DAY = 24 * QUARTERS_AN_HOUR, NINE = 9 * QUARTERS_AN_HOUR,
	NOON = 12 * QUARTERS_AN_HOUR };

enum { NEXT_ON, NEXT_BACK, NEXT_HOUR_ON, NEXT_HOUR_BACK, NEXT_DAY, NEXTS };

struct showing {
	struct task task; /* first */
	struct editor *editor;
	struct arena arena;
	struct moment moment;
	bool is_ready; /* the day's shadows are begun */
};

static bool is_up(const struct showing *showing, int quarter)
{
	struct sun_day day = sun_day_of(sun_latitude(&showing->editor->takeoff),
		showing->moment.date);

	return quarter >= 0 && quarter < QUARTERS_A_DAY &&
		sun_place(&day, (double)quarter / QUARTERS_AN_HOUR).height > 0;
}

static bool date_accept(struct card *card, struct fault *fault)
{
	struct showing *showing = card->owner;
	struct value typed;
	bool is_good;

	if (!card_read(card, 0, &typed, fault))
		return false;
	is_good = date_read(typed.as.text, &showing->moment.date);
	value_fini(VALUE_TEXT, &typed);
	return is_good || fault_set(fault, 0, "Day: year, month and day, such as 2026-06-21");
}

/* False where it was left. The day begins at nine, or at noon where the sun is not up by nine: at
 * noon it is, at all latitudes that a plot may have. */
static bool day_ask(struct showing *showing)
{
	static const struct value_rule rule = { .kind = VALUE_TEXT, .least = 1,
		.most = DATE_SIZE };
	struct moment *moment = &showing->moment;
	char date[DATE_SIZE];
	struct field_spec field = { .label = "Day", .rule = &rule, .required = true,
		.meaning = "Whose shadows are shown: year, month and day.", .typed = date };

	date_write(moment->date, date);
	if (!card_ask(showing->editor, &(struct card_spec){ .title = "Shadows", .done = "show them",
		.fields = &field, .count = 1, .accept = date_accept, .owner = showing }))
		return false;
	showing->is_ready = false;
	moment->quarter = is_up(showing, NINE) ? NINE : NOON;
	return true;
}

static bool cast(struct task *task)
{
	struct showing *showing = (struct showing *)task;
	struct moment *moment = &showing->moment;

	if (!showing->is_ready) {
		arena_clear(&showing->arena);
		showing->is_ready = sun_shadows_begin(&moment->shadows, &showing->arena,
			&showing->editor->takeoff, moment->date);
	}
	return showing->is_ready && sun_shadows_cast(&moment->shadows,
		(double)moment->quarter / QUARTERS_AN_HOUR);
}

/* Nothing is shown while they are cast. False where that was given up. */
static bool shadows_cast(struct showing *showing)
{
	struct editor *editor = showing->editor;

	editor->moment = NULL;
	if (!editor->asker->await(editor->asker, &showing->task))
		return false;
	editor->moment = &showing->moment;
	return true;
}

static int next_ask(struct editor *editor, int first)
{
	static const char *const answers[NEXTS] = { "15 min on", "15 min back", "1 h on",
		"1 h back", "Another day" };
	static const char *const notes[NEXTS] = { "Right", "Left", "PgDn", "PgUp", "" };
	static const int keys[NEXTS] = { PRESS_RIGHT, PRESS_LEFT, PRESS_PAGE_DOWN, PRESS_PAGE_UP,
		PRESS_NOTHING };

	return editor->asker->choose(editor->asker, &(struct question){
		.text = "The shadows of this moment. Which next?", .answers = answers,
		.notes = notes, .keys = keys, .count = NEXTS, .first = first });
}

/* As far as the sun is up. */
static void step(struct showing *showing, int next)
{
	static const int quarters[NEXTS] = { 1, -1, QUARTERS_AN_HOUR, -QUARTERS_AN_HOUR, 0 };
	int way = quarters[next] < 0 ? -1 : 1;

	for (int i = 0; i != quarters[next]; i += way)
		if (is_up(showing, showing->moment.quarter + way))
			showing->moment.quarter += way;
}

static void act_shadows(struct editor *editor)
{
	struct showing showing = { .task = { "Casting the shadows", cast }, .editor = editor,
		.arena = ARENA_EMPTY };
	int next = NEXT_DAY, first = NEXT_ON;

	if (!has_site(editor) || !act_count(editor))
		return;
	showing.moment.date = sun_longest_day(sun_latitude(&editor->takeoff));
	while (next != ANSWER_NONE) {
		if (next != NEXT_DAY)
			step(&showing, next);
		else if (!day_ask(&showing))
			break;
		if (!shadows_cast(&showing))
			break;
		next = next_ask(editor, first);
		first = next == NEXT_DAY ? NEXT_ON : next;
	}
	editor->moment = NULL;
	arena_clear(&showing.arena);
}

static const struct act acts[] = {
	{ .id = ACT_SHOW_SUN, .key_name = "!", .name = "Show hours of sun",
		.wish = "see where the sun comes to",
		.words = "light shade layer sunny shady plants hide", .state = is_shown,
		.run = act_show_sun },
	{ .id = ACT_SHADOWS, .key_name = "!", .name = "Shadows of a day",
		.wish = "see shadows go through a day",
		.words = "sun shade light moment hour time morning evening",
		.run = act_shadows },
};
const struct act_group acts_of_sun = ACT_GROUP("Around", acts);
