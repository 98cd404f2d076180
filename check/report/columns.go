package report

import "strings"

const gap = 2

// columns sets a table with wrapped cells. Columns without any entry are left out. A table whose words do
// not fit side by side is set as one block of "Head: cell" lines for each row.
func columns(head []string, rows [][]string, width int) []string {
	head, rows = used(head, rows)
	widths, ok := fit(head, rows, width)
	if !ok {
		return stacked(head, rows, width)
	}
	dashes := make([]string, len(head))
	for i, w := range widths {
		dashes[i] = strings.Repeat("-", w)
	}
	lines := append(row(head, widths), row(dashes, widths)...)
	for _, cells := range rows {
		lines = append(lines, row(cells, widths)...)
	}
	return lines
}

// used drops the columns that no row fills.
func used(head []string, rows [][]string) ([]string, [][]string) {
	var keep []int
	for i := range head {
		for _, cells := range rows {
			if cells[i] != "" {
				keep = append(keep, i)
				break
			}
		}
	}
	out := make([][]string, len(rows))
	for r, cells := range rows {
		out[r] = pick(cells, keep)
	}
	return pick(head, keep), out
}

func pick(cells []string, keep []int) []string {
	var out []string
	for _, i := range keep {
		out = append(out, cells[i])
	}
	return out
}

// fit is the width of each column, never below its longest word, and whether they fit side by side.
func fit(head []string, rows [][]string, width int) ([]int, bool) {
	widths, least, sum := make([]int, len(head)), make([]int, len(head)), gap*(len(head)-1)
	for i := range head {
		for _, cells := range append([][]string{head}, rows...) {
			widths[i] = max(widths[i], min(runes(cells[i]), width))
			for _, word := range words(cells[i]) {
				least[i] = max(least[i], runes(word))
			}
		}
		widths[i] = max(widths[i], least[i])
		sum += widths[i]
	}
	return widths, shrink(widths, least, sum-width)
}

// shrink takes the surplus from whichever column is widest, and says whether all of it could be taken.
func shrink(widths, least []int, surplus int) bool {
	for ; surplus > 0; surplus-- {
		widest := -1
		for i := range widths {
			if widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest]) {
				widest = i
			}
		}
		if widest < 0 {
			return false
		}
		widths[widest]--
	}
	return true
}

// row is one row of cells, as many lines high as its tallest cell.
func row(cells []string, widths []int) []string {
	var lines []string
	for i, cell := range cells {
		for n, piece := range wrap("", "", cell, widths[i]) {
			if n == len(lines) {
				lines = append(lines, "")
			}
			lines[n] = pad(lines[n], start(widths, i)) + piece
		}
	}
	return lines
}

// start is the column in which cell i begins.
func start(widths []int, i int) int {
	at := 0
	for _, w := range widths[:i] {
		at += w + gap
	}
	return at
}

func stacked(head []string, rows [][]string, width int) []string {
	var lines []string
	for _, cells := range rows {
		mark := "- "
		for i, cell := range cells {
			if cell != "" {
				lines = append(lines, wrap(mark, "    ", head[i]+": "+cell, width)...)
				mark = "  "
			}
		}
	}
	return lines
}
