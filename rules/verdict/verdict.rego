# METADATA
# title: What the rules found
# description: |
#   findings is an object from area and fault to the reports of that rule. A rule that found nothing is
#   left out; nothing else decides here.
package verdict

findings[area][fault] := report if {
	report := data.rules[area][fault].report
	count(report) > 0
}
