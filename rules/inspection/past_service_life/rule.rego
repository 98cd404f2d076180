# METADATA
# title: A hose is older than its service life
# description: |
#   Rubber and plastics age in use and in store, and an old hose can pass a test and fail the next day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [life_stated]
#   needs: [hoses.age_days, hoses.life_days]
#   message: "{part} is {have_days} old; its service life is {need_days}"
#   action: "Replace the hose and destroy the old one so that it does not come back."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(5)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.past_service_life

report contains {"subject": h.id, "part": h.id, "have_days": h.age_days, "need_days": h.life_days} if {
	some h in input.hoses
	h.life_stated
	h.age_days > h.life_days
}
