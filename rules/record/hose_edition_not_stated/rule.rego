# METADATA
# title: The edition of a hose class is not stated though its rating depends on it
# description: |
#   Some classes kept their marking while the working pressure changed. Without the edition the lower
#   figure counts.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [edition_matters]
#   needs: []
#   message: "{part} is marked with a class whose rating changed between editions, and the edition is not stated"
#   action: "Find edition or year made on the hose or its certificate, and write it in the line sheet."
#   basis:
#     - document: SAE J517
#       edition: "JUL2003 and JUL2020"
#       clause: "scope and rationale"
#       standing: published
package rules.record.hose_edition_not_stated

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.edition_matters
	not h.edition_stated
}
