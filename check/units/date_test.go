package units

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Day counts from the Gregorian calendar (ISO 8601-1:2019; recalled): 2000-01-01 is day
// 10957, and 2000 is a leap year where 1900 and 2100 are not.
func TestDates(t *testing.T) {
	for typed, want := range map[string]Date{
		"1970-01-01": {0, false}, "1970-01-02": {1, false}, "2000-01-01": {10957, false}, "2000-03-01": {11017, false},
		"1969-12-31": {-1, false}, "2024-03": {19783, true}, "2024-03-01": {19783, false}, " 2026-11-25 ": {20782, false},
	} {
		got, err := ParseDate(typed)
		require.NoError(t, err, typed)
		assert.Equal(t, want, got, typed)
	}
	for _, typed := range []string{"1900-01-01", "2200-12-31", "2000-02-29"} {
		got, err := ParseDate(typed)
		require.NoError(t, err)
		assert.Equal(t, typed, got.String())
	}
	month, err := ParseDate("2024-03")
	require.NoError(t, err)
	assert.Equal(t, "2024-03", month.String())
}

func TestDateRefusals(t *testing.T) {
	for typed, want := range map[string]string{
		"": "is not a date: write year-month-day like 2026-11-25", "25/11/2026": "is not a date", "2026": "is not a date",
		"2026-11-25T00:00:00Z": "is not a date", "2026-13": "is not in the calendar", "2025-02-29": "is not in the calendar",
		"1900-02-29": "is not in the calendar", "1899-12-31": "outside the years 1900 to 2200", "2201-01": "outside the years",
	} {
		_, err := ParseDate(typed)
		assert.ErrorContains(t, err, want, typed)
	}
}

func TestAddMonths(t *testing.T) {
	for _, c := range []struct {
		from   string
		months string
		due    string
	}{
		{"2026-02-10", "12 months", "2027-02-10"}, {"2026-01-31", "1 month", "2026-02-28"}, {"2024-01-31", "1 month", "2024-02-29"},
		{"2024-02-29", "1 year", "2025-02-28"}, {"2024-03", "5 years", "2029-03-01"}, {"2025-11-30", "3 months", "2026-02-28"},
		{"2026-08-31", "2.5 years", "2029-02-28"}, {"2026-12-31", "1 month", "2027-01-31"},
	} {
		from, err := ParseDate(c.from)
		require.NoError(t, err)
		m, err := ParseMonths(c.months)
		require.NoError(t, err)
		due := from.AddMonths(m)
		assert.Equal(t, c.due, due.String(), c.from)
		assert.Equal(t, from.Days, due.Days-due.DaysSince(from))
		assert.Positive(t, due.DaysSince(from))
	}
}
