# METADATA
# title: A hose is older than the site allows
# description: |
#   The site takes every hose out of use at one age, whatever its maker says.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.age_days]
#   message: "{part} was made {have_days} ago; the site uses a hose for {need_days}"
#   action: "Fit a new hose, and scrap this one so that nobody fits it again."
#   basis:
#     - document: the site's own limit
#       edition: "limits.yaml"
#       clause: hose_age_days
#       standing: site
package site.inspection.hose_older_than_site_allows

report contains {"subject": h.id, "part": h.id, "have_days": h.age_days, "need_days": longest} if {
	longest := data.site.limits.hose_age_days
	some h in input.hoses
	h.age_days > longest
}
