# METADATA
# title: No rule is written for a law or standard that the sheet names
# description: |
#   Either it is spelt another way than the rules spell it, and then its requirements were not checked, or
#   this tool does not know it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: line
#   scope: []
#   needs: []
#   message: "Nothing was checked against {regime}: no rule is written for it under that name"
#   action: >-
#     Compare the name with the list of lineworthy rules law, correct it, or check the line against that
#     document by hand and keep the record.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.record.regime_without_rules

report contains {"subject": "line", "regime": r} if {
	some r in input.line.regimes_without_rules
}
