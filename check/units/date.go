package units

import (
	"fmt"
	"regexp"
	"time"
)

// Date is a calendar day counted from 1970-01-01. A month without a day stands for its
// first day, which makes a part older and a test due sooner: the safe side for both.
// For a date that looks forward (the day of the job) the first day is not the safe side:
// turn MonthOnly dates away there.
type Date struct {
	Days      int  // since 1970-01-01
	MonthOnly bool // typed as 2024-03
}

const (
	earliestYear = 1900
	latestYear   = 2200
	secondsADay  = 86400
)

var (
	dayForm   = regexp.MustCompile(`^[0-9]{4}-[0-9]{2}-[0-9]{2}$`)
	monthForm = regexp.MustCompile(`^[0-9]{4}-[0-9]{2}$`)
)

// ParseDate reads ISO 8601 dates, 2026-11-25, and months, 2024-03, of 1900..2200.
func ParseDate(s string) (Date, error) {
	text := tidy(s)
	var day time.Time
	var err error
	switch {
	case dayForm.MatchString(text):
		day, err = time.Parse(time.DateOnly, text)
	case monthForm.MatchString(text):
		day, err = time.Parse("2006-01", text)
	default:
		return Date{}, fmt.Errorf("%s is not a date: write year-month-day like 2026-11-25, or year-month like 2024-03", quote(s))
	}
	if err != nil {
		return Date{}, fmt.Errorf("%s is not in the calendar: check the month and day", quote(s))
	}
	if day.Year() < earliestYear || day.Year() > latestYear {
		return Date{}, fmt.Errorf("%s is outside the years %d to %d", quote(s), earliestYear, latestYear)
	}
	return Date{Days: daysOf(day), MonthOnly: monthForm.MatchString(text)}, nil
}

func daysOf(day time.Time) int     { return int(day.Unix() / secondsADay) }
func (d Date) midnight() time.Time { return time.Unix(int64(d.Days)*secondsADay, 0).UTC() }

// AddMonths is the same day of a later month, or the last day of a shorter month,
// so a due date never slips into the month after.
func (d Date) AddMonths(m Months) Date {
	start := d.midnight()
	first := time.Date(start.Year(), start.Month()+time.Month(m), 1, 0, 0, 0, 0, time.UTC)
	last := first.AddDate(0, 1, -1).Day()
	return Date{Days: daysOf(first) + min(start.Day(), last) - 1}
}

// DaysSince is the number of days from other to d, negative when d is earlier.
func (d Date) DaysSince(other Date) int { return d.Days - other.Days }

// String prints as typed: 2026-11-25, or 2024-03 for a month.
func (d Date) String() string {
	if d.MonthOnly {
		return d.midnight().Format("2006-01")
	}
	return d.midnight().Format(time.DateOnly)
}
