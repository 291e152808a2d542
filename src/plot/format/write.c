#include "plot/format/format.h"

static void write_notes(const struct notes *notes, const char *indent, struct text *out)
{
	for (size_t i = 0; i < notes->count; i++) {
		text_print(out, "%snote ", indent);
		text_add_quoted(out, notes->texts[i]);
		text_add(out, "\n");
	}
}

static void write_attribute(const struct block *block, enum attribute a, const char *indent,
	struct text *out, enum units units)
{
	const struct value *value = block_value(block, a);

	if (!value->set)
		return;
	text_print(out, "%s%s ", indent, attribute_row(a)->keyword);
	value_write(out, &attribute_row(a)->rule, value, units);
	text_add(out, "\n");
}

static void write_block(const struct block *block, struct text *out, enum units units)
{
	write_notes(&block->notes, "  ", out);
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		write_attribute(block, a, "  ", out, units);
}

/* The head's notes follow the title. */
static void write_head(const struct details *details, struct text *out, enum units units)
{
	for (enum attribute a = block_first(BLOCK_HEAD); a <= block_last(BLOCK_HEAD); a++) {
		write_attribute(&details->head, a, "", out, units);
		if (a == HEAD_TITLE)
			write_notes(&details->head.notes, "", out);
	}
	if (!block_is_empty(&details->allow)) {
		text_print(out, "%s\n", block_keyword(BLOCK_ALLOW));
		write_block(&details->allow, out, units);
	}
}

static void write_rows(const struct ground *ground, struct text *out)
{
	for (int y = 0; y < ground->rows; y++)
		text_print(out, "  %.*s\n", ground->columns, ground_at(ground, 0, y));
}

static void write_route(const char *keyword, const struct route *route, struct text *out)
{
	text_print(out, "  %s", keyword);
	for (int i = 0; i < route->count; i++)
		text_print(out, " %d,%d", route->points[i].x, route->points[i].y);
	text_add(out, "\n");
}

static void write_fence(const struct fence *fence, struct text *out, enum units units)
{
	text_print(out, "%s ", block_keyword(BLOCK_FENCE));
	text_add_quoted(out, fence->name);
	text_add(out, "\n");
	write_block(&fence->block, out, units);
	for (size_t i = 0; i < fence->run_count; i++)
		write_route("run", &fence->runs[i], out);
	for (size_t i = 0; i < fence->gates.count; i++) {
		const struct leg *gate = &fence->gates.items[i];

		text_print(out, "  gate %d,%d %d,%d\n", gate->from.x, gate->from.y, gate->to.x,
			gate->to.y);
	}
}

static void write_service(const struct service *service, struct text *out, enum units units)
{
	text_print(out, "%s %s ", block_keyword(BLOCK_SERVICE), service_words[service->kind]);
	text_add_quoted(out, service->name);
	text_print(out, " %s\n", service_states[service->is_to_lay]);
	write_block(&service->block, out, units);
	for (size_t i = 0; i < service->routes.count; i++)
		write_route("line", &service->routes.items[i], out);
}

static void write_plant(const struct plant *plant, struct text *out, enum units units)
{
	text_print(out, "%s %c ", block_keyword(BLOCK_PLANT), plant->letter);
	text_add_quoted(out, plant->name);
	text_add(out, "\n");
	write_block(&plant->block, out, units);
	for (size_t i = 0; i < plant->specimen_count; i++)
		text_print(out, "  at %d,%d\n", plant->specimens[i].x, plant->specimens[i].y);
	for (size_t i = 0; i < plant->drift_count; i++) {
		const struct drift *drift = &plant->drifts[i];

		if (drift->letter)
			text_print(out, "  drift %c", drift->letter);
		else
			text_print(out, "  drift %d,%d", drift->at.x, drift->at.y);
		text_print(out, " %s\n", band_words[drift->band]);
	}
}

static void write_levels(const struct levels *levels, struct text *out, enum units units)
{
	if (!levels->step)
		return;
	text_add(out, "levels ");
	length_write(out, levels->step, units);
	for (int i = 0; i < levels->columns * levels->rows; i++) {
		text_add(out, i % levels->columns ? ", " : "\n  ");
		length_write(out, levels->drops[i], units);
	}
	text_add(out, "\n");
}

static void write_finish(const struct finish *finish, struct text *out, enum units units)
{
	if (finish->has_level) {
		text_print(out, "finish %d,%d ", finish->at.x, finish->at.y);
		length_write(out, finish->drop, units);
		text_add(out, "\n");
	}
	if (finish->has_fall) {
		text_add(out, "fall ");
		text_add_decimal(out, finish->percent, DECIMAL_PLACES);
		text_print(out, " %% %s", fall_words[finish->is_away]);
		if (!finish->is_away) {
			text_add(out, " ");
			text_add_decimal(out, finish->bearing, DECIMAL_PLACES);
		}
		text_add(out, "\n");
	}
}

static void write_obstacles(const char *keyword, const struct obstacles *obstacles,
	struct text *out, enum units units)
{
	for (size_t i = 0; i < obstacles->count; i++) {
		const struct obstacle *obstacle = &obstacles->items[i];
		const struct rectangle *cells = &obstacle->cells;

		text_print(out, "%s ", keyword);
		text_add_quoted(out, obstacle->name);
		if (obstacle->radius || obstacle->height) {
			text_add(out, " ");
			length_write(out, obstacle->radius + obstacle->height, units);
		}
		text_add(out, "\n");
		write_notes(&obstacle->notes, "  ", out);
		if (obstacle->radius)
			text_print(out, "  at %d,%d\n", obstacle->at.x, obstacle->at.y);
		else
			text_print(out, "  from %d,%d to %d,%d\n", cells->left, cells->top,
				cells->right + 1, cells->bottom + 1);
	}
}

static void write_ties(const struct ties *ties, struct text *out, enum units units)
{
	for (size_t i = 0; i < ties->count; i++) {
		text_print(out, "tie %d,%d ", ties->items[i].at.x, ties->items[i].at.y);
		text_add_quoted(out, ties->items[i].name);
		text_add(out, " ");
		length_write(out, ties->items[i].length, units);
		text_add(out, "\n");
	}
}

static void write_names(const struct names *names, struct text *out)
{
	for (size_t i = 0; i < names->count; i++) {
		text_print(out, "name %d,%d ", names->items[i].at.x, names->items[i].at.y);
		text_add_quoted(out, names->items[i].text);
		text_add(out, "\n");
	}
}

static void write_rates(const struct block *rates, struct text *out, enum units units)
{
	struct text start = TEXT_EMPTY;

	text_print(&start, "%s ", block_keyword(BLOCK_RATES));
	for (enum attribute a = block_first(BLOCK_RATES); a <= block_last(BLOCK_RATES); a++)
		write_attribute(rates, a, start.bytes, out, units);
	text_fini(&start);
}

static void write_extra(const struct extra *extra, struct text *out)
{
	text_add(out, "extra ");
	text_add_quoted(out, extra->name);
	text_add(out, " ");
	amount_write(out, &extra->amount);
	text_add(out, "\n");
}

/* What follows the ground, a blank line before it. */
static void write_later(const struct details *details, struct text *out, enum units units)
{
	const struct surroundings *around = &details->around;
	size_t start = out->length;

	text_add(out, "\n");
	for (size_t i = 0; i < details->fence_count; i++)
		write_fence(&details->fences[i], out, units);
	for (size_t i = 0; i < around->services.count; i++)
		write_service(&around->services.items[i], out, units);
	for (size_t i = 0; i < details->plants.count; i++)
		write_plant(&details->plants.items[i], out, units);
	write_levels(&details->levels, out, units);
	write_finish(&details->finish, out, units);
	write_obstacles("house", &around->houses, out, units);
	write_obstacles("shade", &around->shades, out, units);
	write_names(&details->names, out);
	write_ties(&around->ties, out, units);
	write_obstacles("keep", &around->kept, out, units);
	if (around->has_drop)
		text_print(out, "drop %d,%d\n", around->drop.x, around->drop.y);
	if (around->has_tap)
		text_print(out, "tap %d,%d\n", around->tap.x, around->tap.y);
	write_rates(&details->rates, out, units);
	for (size_t i = 0; i < details->extra_count; i++)
		write_extra(&details->extras[i], out);
	if (out->length == start + 1)
		text_cut(out, start);
}

static void write_plot(const struct plot *plot, bool has_rows, struct text *out)
{
	const struct details *details = &plot->details;
	enum units units = plot_units(plot);

	text_print(out, "parterre-plot %d\n", FORMAT_VERSION);
	write_head(details, out, units);
	for (size_t i = 0; i < details->legend_count; i++) {
		const struct entry *entry = &details->legend[i];

		text_print(out, "%s%s %c ", i ? "" : "\n", class_word(entry->class), entry->letter);
		text_add_quoted(out, entry->name);
		text_add(out, "\n");
		write_block(&entry->block, out, units);
	}
	text_print(out, "\nground %d x %d\n", plot->ground.columns, plot->ground.rows);
	if (has_rows)
		write_rows(&plot->ground, out);
	write_later(details, out, units);
}

void format_write(const struct plot *plot, struct text *out)
{
	write_plot(plot, true, out);
}

void format_write_details(const struct plot *plot, struct text *out)
{
	write_plot(plot, false, out);
}
