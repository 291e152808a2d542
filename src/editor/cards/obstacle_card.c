#include "editor/cards/obstacle_card.h"
#include "editor/cards/spot_fields.h"

#include <stdlib.h>

enum { NAME, ACROSS, DOWN, RADIUS, CIRCLE_FIELDS, WIDTH = RADIUS, DEPTH, RECTANGLE_FIELDS,
	HEIGHT = RECTANGLE_FIELDS, STANDING_FIELDS };
enum { NEW_ONE = -1 };
enum kind { HOUSE, SHADE, KEPT };

/* The card's owner. */
struct entering {
	struct editor *editor;
	enum kind kind;
	bool is_circle;
	int which; /* NEW_ONE: one that is not there yet */
	const struct obstacle *obstacle; /* as it is so far, or as it is offered */
};

static int fields_of(const struct entering *entering)
{
	if (entering->kind != KEPT)
		return STANDING_FIELDS;
	return entering->is_circle ? CIRCLE_FIELDS : RECTANGLE_FIELDS;
}

/* Of the fields for a place: rectangles may be beyond the plan. */
static struct reach reach_of(const struct entering *entering, int field)
{
	if (field == WIDTH || field == DEPTH)
		return (struct reach){ 1, 2 * CORNER_MOST, NULL };
	if (entering->is_circle)
		return spot_reach(entering->editor, field == DOWN);
	return (struct reach){ -CORNER_MOST, CORNER_MOST - 1, NULL };
}

static bool check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct entering *entering = card->owner;
	int last = entering->is_circle ? DOWN : DEPTH;
	bool is_place = field >= ACROSS && field <= last;

	return !is_place || spot_check(card, field, value, entering->editor,
		reach_of(entering, field), fault);
}

/* ---- Reading -------------------------------------------------------------------------------- */

static bool circle_read(const struct card *card, struct obstacle *out, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct value radius;

	if (!spot_point_read(card, ACROSS, entering->editor, &out->at, fault) ||
		!card_read(card, RADIUS, &radius, fault))
		return false;
	out->radius = radius.as.length;
	return true;
}

/* From an edge on so far as its field says. */
static bool side_read(const struct card *card, int field, int from, int *to, struct fault *fault)
{
	const struct entering *entering = card->owner;
	int cells;

	if (!spot_read(card, field, entering->editor, reach_of(entering, field), &cells, fault))
		return false;
	*to = from + cells - 1;
	return *to < CORNER_MOST || fault_set(fault, field,
		"%s: it would end more than %d cells from the plan's corner",
		card->fields[field].label, CORNER_MOST);
}

static bool rectangle_read(const struct card *card, struct obstacle *out, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct rectangle *cells = &out->cells;

	return spot_read(card, ACROSS, entering->editor, reach_of(entering, ACROSS), &cells->left,
		fault) && spot_read(card, DOWN, entering->editor, reach_of(entering, DOWN),
		&cells->top, fault) &&
		side_read(card, WIDTH, cells->left, &cells->right, fault) &&
		side_read(card, DEPTH, cells->top, &cells->bottom, fault);
}

/* Without one a house has none that is told. */
static bool height_read(const struct card *card, struct obstacle *out, struct fault *fault)
{
	struct value height;

	if (!card_read(card, HEIGHT, &height, fault))
		return false;
	out->height = height.set ? height.as.length : 0;
	return true;
}

/* Its notes, in a block. */
static struct block block_of(const struct obstacle *obstacle)
{
	return (struct block){ .kind = BLOCK_SERVICE, .notes = obstacle->notes };
}

/* All that the card says; the name and the notes are the caller's. */
static bool obstacle_read(const struct card *card, struct obstacle *out, struct fault *fault)
{
	const struct entering *entering = card->owner;
	const struct block_part part = block_notes_alone();
	struct block before = block_of(entering->obstacle), block = block_copy(&before);
	bool is_good = card_name_read(card, NAME, entering->obstacle->name, &out->name, fault) &&
		(entering->is_circle ? circle_read(card, out, fault) :
		rectangle_read(card, out, fault)) &&
		(entering->kind == KEPT || height_read(card, out, fault)) &&
		block_fields_read(card, fields_of(entering), &block, &part, fault);

	if (is_good) {
		out->notes = block.notes;
	} else {
		free(out->name);
		block_fini(&block);
	}
	return is_good;
}

static struct obstacles *among(struct surroundings *around, enum kind kind)
{
	return kind == HOUSE ? &around->houses : kind == SHADE ? &around->shades : &around->kept;
}

static bool accept(struct card *card, struct fault *fault)
{
	const struct entering *entering = card->owner;
	struct obstacle read = { .name = NULL }, *obstacle;
	struct obstacles *obstacles;

	if (!obstacle_read(card, &read, fault))
		return false;
	obstacles = among(&editor_edit(entering->editor)->details.around, entering->kind);
	obstacle = entering->which == NEW_ONE ? obstacles_add(obstacles, NULL) :
		&obstacles->items[entering->which];
	free(obstacle->name);
	notes_fini(&obstacle->notes);
	*obstacle = read;
	return true;
}

/* ---- Asking --------------------------------------------------------------------------------- */

static struct field_spec name_of(const struct entering *entering)
{
	static const char *const meanings[] = {
		[HOUSE] = "What the house is called: Number 4.",
		[SHADE] = "What casts the shade: Limes next door.",
		[KEPT] = "What is kept: Old pear, with its roots." };

	return card_name(meanings[entering->kind], entering->obstacle->name);
}

static bool obstacle_ask(struct entering *entering, const char *title,
	const struct field_spec *fields)
{
	const struct block block = block_of(entering->obstacle);

	return card_ask(entering->editor, &(struct card_spec){ .title = title,
		.done = entering->which == NEW_ONE ? "add it" : "set all this", .fields = fields,
		.count = fields_of(entering), .block = &block, .part = block_notes_alone(),
		.accept = accept, .check = check, .owner = entering });
}

static bool circle_ask(struct entering *entering)
{
	struct report report = editor_report(entering->editor, &entering->editor->words);
	const struct obstacle *circle = entering->obstacle;
	const struct field_spec fields[CIRCLE_FIELDS] = {
		[NAME] = name_of(entering),
		[ACROSS] = spot_field(&report, "Middle, across",
			"How far its middle is from the plan's left edge.", circle->at.x),
		[DOWN] = spot_field(&report, "Middle, down",
			"How far its middle is from the plan's top edge.", circle->at.y),
		[RADIUS] = { .label = "Radius", .rule = &radius_rule, .required = true,
			.span = SPAN_LONG,
			.meaning = "From the middle to where roots end: ground within is not dug.",
			.typed = circle->radius ? exact_length(&report, circle->radius) : NULL },
	};

	return obstacle_ask(entering, "Kept: a tree, or what else is round", fields);
}

static bool rectangle_ask(struct entering *entering)
{
	struct report report = editor_report(entering->editor, &entering->editor->words);
	static const char *const titles[] = { [HOUSE] = "A house", [SHADE] = "Shade",
		[KEPT] = "Kept: a wall or a cover" };
	const struct rectangle *r = &entering->obstacle->cells;
	nm height = entering->obstacle->height;
	const struct field_spec fields[STANDING_FIELDS] = {
		[NAME] = name_of(entering),
		[ACROSS] = spot_field(&report, "Left edge, across",
			"From the plan's left edge; with a minus, left of the plan.", r->left),
		[DOWN] = spot_field(&report, "Top edge, down",
			"From the plan's top edge; with a minus, above the plan.", r->top),
		[WIDTH] = spot_field(&report, "Width", "How wide it is, from left to right.",
			r->right - r->left + 1),
		[DEPTH] = spot_field(&report, "Depth", "How deep it is, from top to bottom.",
			r->bottom - r->top + 1),
		[HEIGHT] = { .label = "Height", .rule = &height_rule,
			.required = entering->kind == SHADE, .span = SPAN_LONG,
			.meaning = "How high it stands above the ground. Its shade is that of a "
				"solid block.",
			.unset = "not told",
			.typed = height ? exact_length(&report, height) : NULL },
	};

	return obstacle_ask(entering, titles[entering->kind], fields);
}

bool house_card_change(struct editor *editor, int which)
{
	struct entering entering = { .editor = editor, .kind = HOUSE, .which = which,
		.obstacle = &editor->plot->details.around.houses.items[which] };

	return rectangle_ask(&entering);
}

bool shade_card_change(struct editor *editor, int which)
{
	struct entering entering = { .editor = editor, .kind = SHADE, .which = which,
		.obstacle = &editor->plot->details.around.shades.items[which] };

	return rectangle_ask(&entering);
}

bool keep_card_change(struct editor *editor, int which)
{
	const struct obstacle *kept = &editor->plot->details.around.kept.items[which];
	struct entering entering = { .editor = editor, .kind = KEPT,
		.is_circle = kept->radius > 0, .which = which, .obstacle = kept };

	return entering.is_circle ? circle_ask(&entering) : rectangle_ask(&entering);
}

bool house_card_add(struct editor *editor, struct rectangle cells)
{
	const struct obstacle offered = { .cells = cells };
	struct entering entering = { .editor = editor, .kind = HOUSE, .which = NEW_ONE,
		.obstacle = &offered };

	return rectangle_ask(&entering);
}

bool shade_card_add(struct editor *editor, struct rectangle cells)
{
	const struct obstacle offered = { .cells = cells };
	struct entering entering = { .editor = editor, .kind = SHADE, .which = NEW_ONE,
		.obstacle = &offered };

	return rectangle_ask(&entering);
}

bool keep_card_add_rectangle(struct editor *editor, struct rectangle cells)
{
	const struct obstacle offered = { .cells = cells };
	struct entering entering = { .editor = editor, .kind = KEPT, .which = NEW_ONE,
		.obstacle = &offered };

	return rectangle_ask(&entering);
}

bool keep_card_add_circle(struct editor *editor, struct place middle)
{
	const struct obstacle offered = { .at = middle };
	struct entering entering = { .editor = editor, .kind = KEPT, .is_circle = true,
		.which = NEW_ONE, .obstacle = &offered };

	return circle_ask(&entering);
}
