#include "screen/steer.h"
#include "base/number.h"
#include "screen/control.h"

#include <string.h>

bool stand_is_known(struct stand stand)
{
	return stand.row >= 0;
}

/* ---- Sending --------------------------------------------------------------------------------- */

/* One control, along a row or a column: a byte so many times, or the sequence with that final byte
 * and number. NUL: there is no need. */
struct hop {
	char final;
	int number;
};

static int digits(int number)
{
	return number < 10 ? 1 : number < 100 ? 2 : number < 1000 ? 3 : 4;
}

static bool is_byte(struct hop hop)
{
	return hop.final < ' ';
}

static int hop_bytes(struct hop hop)
{
	if (!hop.final)
		return 0;
	return is_byte(hop) ? hop.number : 3 + (hop.number == 1 ? 0 : digits(hop.number));
}

static struct hop shorter(struct hop one, struct hop other)
{
	return hop_bytes(other) < hop_bytes(one) ? other : one;
}

static struct hop hop_to_row(int from, int to)
{
	struct hop hop = { 'd', to + 1 };

	if (from == to)
		return (struct hop){ '\0', 0 };
	if (to < from)
		return shorter(hop, (struct hop){ 'A', from - to });
	hop = shorter(hop, (struct hop){ 'B', to - from });
	return shorter(hop, (struct hop){ '\n', to - from });
}

static struct hop hop_to_column(int from, int to)
{
	struct hop hop = { 'G', to + 1 };

	if (from == to)
		return (struct hop){ '\0', 0 };
	if (to > from)
		return shorter(hop, (struct hop){ 'C', to - from });
	if (to == 0)
		return (struct hop){ '\r', 1 };
	hop = shorter(hop, (struct hop){ 'D', from - to });
	return shorter(hop, (struct hop){ '\b', from - to });
}

static void hop_send(struct hop hop, struct text *out)
{
	if (is_byte(hop))
		text_add_repeat(out, hop.final, (size_t)hop.number);
	else if (hop.number == 1)
		text_print(out, "\033[%c", hop.final);
	else
		text_print(out, "\033[%d%c", hop.number, hop.final);
}

/* By row and column at once. */
static int direct_bytes(struct stand to)
{
	if (to.column > 0)
		return 4 + digits(to.row + 1) + digits(to.column + 1);
	return hop_bytes((struct hop){ 'H', to.row + 1 });
}

static int hops_bytes(struct stand from, struct stand to)
{
	return hop_bytes(hop_to_row(from.row, to.row)) +
		hop_bytes(hop_to_column(from.column, to.column));
}

int steer_cost(struct stand from, struct stand to)
{
	int direct = direct_bytes(to);

	return stand_is_known(from) ? least(hops_bytes(from, to), direct) : direct;
}

void steer_send(struct stand from, struct stand to, struct text *out)
{
	if (stand_is_known(from) && hops_bytes(from, to) <= direct_bytes(to)) {
		hop_send(hop_to_row(from.row, to.row), out);
		hop_send(hop_to_column(from.column, to.column), out);
	} else if (to.column > 0) {
		text_print(out, "\033[%d;%dH", to.row + 1, to.column + 1);
	} else {
		hop_send((struct hop){ 'H', to.row + 1 }, out);
	}
}

/* ---- Reading --------------------------------------------------------------------------------- */

size_t steer_length(const char *bytes, size_t length)
{
	struct control control = control_read(bytes, length);

	if (*bytes == '\r' || *bytes == '\b')
		return 1;
	return control.length && strchr("ABCDGHd", control.final) ? control.length : 0;
}

/* From a place that is known. */
static bool byte_take(struct stand *stand, struct stand size, char byte)
{
	if (byte == '\r')
		stand->column = 0;
	else if (byte == '\b' && stand->column > 0)
		stand->column--;
	else if (byte == '\n' && stand->row < size.row - 1)
		stand->row++;
	else
		return false;
	return true;
}

static void hop_take(struct stand *stand, struct hop hop)
{
	switch (hop.final) {
	case 'A': stand->row -= hop.number; break;
	case 'B': stand->row += hop.number; break;
	case 'C': stand->column += hop.number; break;
	case 'D': stand->column -= hop.number; break;
	case 'G': stand->column = hop.number - 1; break;
	default: stand->row = hop.number - 1; break;
	}
}

/* Nothing moves beyond the edges. */
static void hold(struct stand *stand, struct stand size)
{
	stand->row = most(0, least(stand->row, size.row - 1));
	stand->column = most(0, least(stand->column, size.column - 1));
}

size_t steer_read(struct stand *stand, struct stand size, const char *bytes, size_t length)
{
	struct control control = control_read(bytes, length);

	if (!control.length)
		return stand_is_known(*stand) && byte_take(stand, size, *bytes);
	if (control.final == 'H')
		*stand = (struct stand){ control_number(&control, 0) - 1,
			control_number(&control, 1) - 1 };
	else if (stand_is_known(*stand) && strchr("ABCDGd", control.final))
		hop_take(stand, (struct hop){ control.final, control_number(&control, 0) });
	else
		return 0;
	hold(stand, size);
	return control.length;
}
