#include "plot/edit/round.h"
#include "base/number.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"

struct round_trial {
	struct trial trial; /* first */
	struct disc disc;
	struct rectangle rectangle;
	int radius;
	char letter;
};

static struct laid disc_lay(struct plot *plot, const struct trial *trial)
{
	const struct round_trial *round = (const struct round_trial *)trial;

	return lay_disc(plot, &round->disc, round->letter);
}

/* "5 ft x 4 ft in cells", where it is not as wide and deep as its diameter. */
static const char *disc_words(struct editor *editor, const struct disc *disc)
{
	struct report report = editor_report(editor, &editor->words);
	struct rectangle r = disc_cells(disc);
	int across = r.right - r.left + 1, down = r.bottom - r.top + 1;

	if (across < 1 || down < 1)
		return "It lies in no cell: no middle of one is in it.";
	if (across == disc->diameter && down == disc->diameter)
		return "";
	return say(&report, "About this middle it is %s in cells, %d x %d.",
		plain_cells(&report, across, down), across, down);
}

/* Its middle is the cursor, or that of the pegged rectangle. */
static void act_disc(struct editor *editor)
{
	static const struct cells_question question = { "Lay a disc", "Diameter", "lay it",
		"From edge to edge through the middle." };
	struct mirror mirror = mirror_of(editor->plot);
	struct rectangle r = editor_pegged(editor);
	int side = least(r.right - r.left, r.bottom - r.top) + 1;
	struct cells cells = { .least = 1, .most = SIDE_MOST,
		.count = editor->is_pegged ? side : editor->run };
	struct round_trial round = { .trial = { disc_lay, "", true },
		.letter = editor->hand };

	if (!cells_ask(editor, &question, &cells))
		return;
	round.disc = editor->is_pegged ? disc_within(r, cells.count) :
		disc_at(&mirror, editor->cursor, cells.count);
	round.trial.words = disc_words(editor, &round.disc);
	if (!act_try(editor, &round.trial))
		return;
	editor->is_pegged = false;
	act_say_cells(editor, "A diameter", &cells);
}

static struct laid rounded_lay(struct plot *plot, const struct trial *trial)
{
	const struct round_trial *round = (const struct round_trial *)trial;

	return lay_rounded(plot, round->rectangle, round->radius, round->letter);
}

static void act_rounded(struct editor *editor)
{
	static const struct cells_question question = { "Round its corners", "Radius", "lay it",
		"How much of each corner's two sides becomes the curve." };
	struct rectangle r = editor_pegged(editor);
	int half = (least(r.right - r.left, r.bottom - r.top) + 1) / 2;
	struct cells cells = { .least = 1, .most = half, .count = half };
	struct round_trial round = { .trial = { rounded_lay, "", true }, .rectangle = r,
		.letter = editor->hand };

	if (!act_has_peg(editor))
		return;
	if (half < 1) {
		editor_say(editor, "One cell across has no corners to be rounded.");
		return;
	}
	if (!cells_ask(editor, &question, &cells))
		return;
	/* cppcheck-suppress unreadVariable ; by rounded_lay */
	round.radius = cells.count;
	if (!act_try(editor, &round.trial))
		return;
	editor->is_pegged = false;
	act_say_cells(editor, "A radius", &cells);
}

static const struct act acts[] = {
	{ .id = ACT_DISC, .key_name = "!", .name = "Lay a round disc",
		.wish = "lay a round bed: a circle",
		.words = "round ring", .writes = true, .lays = true, .run = act_disc },
	{ .id = ACT_ROUNDED, .key_name = "Enter twice", .name = "Round corners",
		.wish = "lay a box with rounded corners",
		.words = "round curve", .writes = true, .lays = true,
		.run = act_rounded },
};
const struct act_group acts_of_round = ACT_GROUP("Draw", acts);
